using FlowCalc.Agents;

namespace FlowCalc.Tests.ClosedForms.Agents;

/// <summary>Nozzles of an ideal gas and of a liquid, from closed forms.</summary>
public sealed class NozzleFluxTests
{
    const double Ambient = 101_325;

    static readonly IdealGasStream Nitrogen = new(296.8, 1.4, 293.15, 1.8e-5);

    [Theory]
    [InlineData(NozzleModel.Delayed)]
    [InlineData(NozzleModel.Equilibrium)]
    [InlineData(NozzleModel.Frozen)]
    public void A_choked_ideal_gas_passes_its_critical_flux_in_every_model(NozzleModel model)
    {
        // 60 bar, 2 mm, discharge coefficient 0.85: 0.03719319019 kg/s, throat at 31.69690726 bar.
        var (flux, throat) = NozzleFlux.Of(Nitrogen.Nozzle(6e6), 6e6, Ambient, model);
        Assert.Equal(0.03719319019, flux * 0.85 * Math.PI / 4 * 4e-6, tolerance: 0.03719319019 * 1e-7);
        Assert.Equal(3169690.726, throat, tolerance: 3169690.726 * 1e-3);
    }

    [Fact]
    public void An_ideal_gas_that_does_not_choke_ends_at_the_pressure_outside()
    {
        var (flux, throat) = NozzleFlux.Of(Nitrogen.Nozzle(6e6), 6e6, 4.5e6, NozzleModel.Delayed);
        Assert.Equal(0.03287074307, flux * 0.85 * Math.PI / 4 * 4e-6, tolerance: 0.03287074307 * 1e-9);
        Assert.Equal(4.5e6, throat);
    }

    [Fact]
    public void The_table_of_an_ideal_gas_is_the_isothermal_path_and_the_isentropic_nozzle()
    {
        var table = ExpansionTable.TryBuild(Nitrogen, 6e6, Ambient, NozzleModel.Delayed)!;
        var rt = 296.8 * 293.15;
        foreach (var bar in (double[])[0.6, 1.2, 1.7, 1.95, 3, 11.1, 42, 59.3])
        {
            var pressure = bar * 1e5;
            var at = table.At(Math.Log(pressure));
            Near(pressure / rt, at.Density, 1e-9);
            Near((pressure * pressure - Ambient * Ambient) / (2 * 6e6), at.Potential, 5e-5);
            Near(rt * Math.Log(pressure / Ambient), at.Work, 5e-5);
            Near(1, at.DensitySlope, 1e-9);
            Near(Math.Log(pressure), table.LogOf(at.Potential, Math.Log(2e5)), 1e-12);
            Near(Math.Log(pressure), table.ChokingLog(pressure / Math.Sqrt(rt)), 1e-9);
            if (pressure > Ambient) Near(NozzleFlux.Of(Nitrogen.Nozzle(pressure), pressure, Ambient, NozzleModel.Delayed).Flux, table.Nozzle(Math.Log(pressure)).Flux, 3e-5);
        }
        var (low, middle, high) = (table.Nozzle(13 - 1e-4).Flux, table.Nozzle(13), table.Nozzle(13 + 1e-4).Flux);
        Near((high - low) / 2e-4, middle.Slope, 1e-4);
    }

    static void Near(double expected, double actual, double within) => Assert.Equal(expected, actual, tolerance: within * Math.Abs(expected) + 1e-12);
}
