using FlowCalc.Agents;

namespace FlowCalc.Tests.ClosedForms.Agents;

/// <summary>
/// Nozzles of a fluid that expands by the ω law v/v0 = 1 + ω·(p0/p − 1): G/√(p0·ρ0) = η/√ω with η²+(ω²−2ω)(1−η)²+2ω²·ln η+2ω²(1−η) = 0 (J. C. Leung, AIChE J. 32 (1986) 1743, from memory,
/// derived again), and of its subcooled and delayed kinds.
/// </summary>
public sealed class OmegaNozzleTests
{
    const double Start = 4e5, Density = 1_400;

    [Theory]
    [InlineData(0.5, 0.5152189814, 0.7286296711)]
    [InlineData(1, 0.6065306597, 0.6065306597)]
    [InlineData(2, 0.6925040665, 0.4896743214)]
    [InlineData(5, 0.7900602911, 0.3533257034)]
    [InlineData(10, 0.8485688753, 0.2683410397)]
    [InlineData(20, 0.8937743473, 0.1998540197)]
    [InlineData(50, 0.9357957836, 0.1323415089)]
    public void A_saturated_inlet_passes_the_critical_flux(double omega, double ratio, double flux) => Check(new OmegaWay(Start, 1 / Density, omega, 1), ratio, flux);

    // The liquid keeps its volume down to its saturation pressure; where it is little subcooled the throat lies below that, where it is much at it.
    [Theory]
    [InlineData(8, 0.97, 0.857698686, 0.3078958846)]
    [InlineData(8, 0.6, 0.6, 0.894427191)]
    public void A_subcooled_inlet_chokes_below_or_at_its_saturation_pressure(double omega, double saturation, double ratio, double flux) =>
        Check(new OmegaWay(Start, 1 / Density, omega, saturation), ratio, flux);

    // Liquid saturated with nitrogen by Henry's law at constant temperature, v = A + B/(p − p_v), is an ω fluid in p − p_v.
    [Fact]
    public void A_liquid_saturated_with_nitrogen_is_such_a_fluid()
    {
        const double temperature = 293.15, start = 2.5e6, vapour = 3.9e5, density = 1_407, henry = 3e-9, gas = 296.8;
        var omega = henry * gas * temperature * density;
        Assert.Equal(0.3672562093, omega, tolerance: 1e-9);

        var (flux, throat) = NozzleFlux.Of(new OmegaWay(start - vapour, 1 / density, omega, 1), start - vapour, 1e3, NozzleModel.Equilibrium);

        Assert.Equal(42_651.50384, flux, tolerance: 42_651.50384 * 1e-7);
        Assert.Equal(1_390_951.653, throat + vapour, tolerance: 2e3);
    }

    // R. Diener, J. Schmidt, Process Safety Progress 23 (2004) 335, from memory: N = (x0 + cp·T0·p0·(vg − vl)/hv²·ln(1/η))^0.6 of what equilibrium boils. The case takes η from the delayed
    // expansion itself; the engine takes that of the choked equilibrium, so that nothing has to be iterated, and the part is checked at the case's η.
    [Fact]
    public void A_delayed_inlet_boils_a_part_of_what_equilibrium_would()
    {
        const double heat = 1_200, kelvin = 293.15, liquid = 1 / 1_400.0, vapour = 0.031, latent = 112_000;
        var drive = heat * kelvin * Start * (vapour - liquid) / (latent * latent);
        var omega = heat * kelvin * Start / liquid * Math.Pow((vapour - liquid) / latent, 2);
        Assert.Equal(14.40451924, omega, tolerance: 1e-7);
        var part = Math.Pow(drive * Math.Log(1 / 0.7551875962), 0.6);
        Assert.Equal(0.2441787597, part, tolerance: 1e-9);

        Assert.Equal(9_528.960702, NozzleFlux.Of(new OmegaWay(Start, liquid, omega, 1, part), Start, 1e3, NozzleModel.Delayed).Flux, tolerance: 1e-2);
        Assert.Equal(5_449.227567, NozzleFlux.Of(new OmegaWay(Start, liquid, omega, 1, part), Start, 1e3, NozzleModel.Equilibrium).Flux, tolerance: 1e-2);
    }

    static void Check(OmegaWay way, double ratio, double flux)
    {
        var answer = NozzleFlux.Of(way, Start, 1e3, NozzleModel.Equilibrium);

        Assert.Equal(flux, answer.Flux / Math.Sqrt(Start * Density), tolerance: flux * 1e-6);
        Assert.Equal(ratio, answer.Throat / Start, tolerance: 2e-3);
    }

    sealed class OmegaWay(double start, double volume, double omega, double saturation, double part = 1) : INozzleWay
    {
        readonly double bubble = saturation * start;

        public bool HasDelay => part < 1;

        public (double Volume, double Work) Equilibrium(double pressure) => pressure >= bubble
            ? Frozen(pressure)
            : (volume * (1 + omega * (bubble / pressure - 1)), volume * (start - bubble + (1 - omega) * (bubble - pressure) + omega * bubble * Math.Log(bubble / pressure)));

        public (double Volume, double Work) Frozen(double pressure) => (volume, volume * (start - pressure));

        public double Part(double ratio) => part;
    }
}
