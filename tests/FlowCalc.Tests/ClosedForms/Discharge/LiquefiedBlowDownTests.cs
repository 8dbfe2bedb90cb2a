using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Networks;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>Bottles of liquid whose pressure falls by simple laws, drawn through Cd·A of 8.796 mm² without boiling in the nozzle: closed forms, and for the first two separate integrators, derived for the purpose.</summary>
public sealed class LiquefiedBlowDownTests
{
    const double Area = 8.79645943005142e-06, Ambient = 101_325;

    // A saturated liquid that boils in its bottle and cools: 57 bar at 293.15 K. What comes after the liquid is not asked.
    [Fact]
    public void A_saturated_bottle_without_heat_cools_and_leaves_a_fifth_as_vapour()
    {
        var (course, end) = Run(new BoilingBottle(0.005, 3.4), floor: 3.7e6);

        Near(3.623707043, course.LiquidEnd, 1e-4);
        Near(276.5937601, end.GasTemperature, 2e-5);
        Near(3_867_118.564, end.BottlePressure, 2e-4);
        Near(0.699061064, end.LiquidInBottle, 2e-4);
    }

    // 5.5 kg under nitrogen at 25 bar in 6 L at constant temperature, the nitrogen always in equilibrium with the liquid, or none of it coming out.
    [Theory]
    [InlineData(true, 1_301_018.785, 9.272725501)]
    [InlineData(false, 1_125_325.752, 9.904748231)]
    public void Nitrogen_over_a_liquid_keeps_its_pressure_up_as_it_comes_out(bool comesOut, double pressure, double seconds)
    {
        var (course, end) = Run(new SaturatedBottle(comesOut));

        Near(seconds, course.LiquidEnd, 1e-4);
        Near(pressure, end.BottlePressure, 2e-4);
    }

    static (DischargeCourse Course, DischargeSample End) Run(IExpandingBottle bottle, double floor = 0)
    {
        var builder = new NetworkBuilder(1);
        builder.AddNozzle(builder.AddRun(-1, new(0.1, 0, 0, 0, 0)), Area);
        var course = ExpandingRun.Of(new ExpandingProblem { Network = builder.Build(), Volume = [0], Area = [Math.PI / 4 * 0.01], Ambient = Ambient, Bottle = bottle, FloorPressure = floor, LargestPart = 0.04 }, TestContext.Current.CancellationToken);
        Assert.Null(course.Failure);
        return (course, course.Samples.First(sample => sample.Time >= course.LiquidEnd));
    }

    static void Near(double expected, double actual, double within) => Assert.Equal(expected, actual, tolerance: within * expected);

    /// <summary>p = 57 bar·exp(−1900·(1/T − 1/293.15)), vapour R = 100 J/(kg·K), latent heat 150 kJ/kg and liquid c = 2600 J/(kg·K), 770 kg/m³.</summary>
    sealed class BoilingBottle(double volume, double charge) : IExpandingBottle
    {
        const double Gas = 100, Latent = 150_000, Heat = 2_600, Liquid = 770, Zero = 293.15;

        public int Length => 2;

        public double Charge => charge;

        public void Start(Span<double> y) => (y[0], y[1]) = (charge, Energy(charge, Zero));

        public double Agent(ReadOnlySpan<double> y) => y[0];

        public bool TryDraw(ReadOnlySpan<double> y, bool isLiquid, out Draw draw)
        {
            var t = Temperature(y);
            draw = new(Pressure(t), t, t, Math.Max(LiquidMass(y[0], t), 0) / Liquid, Liquid, 1);
            return true;
        }

        public IStream? Stream(ReadOnlySpan<double> y, bool isLiquid, double lowest) => isLiquid ? new SteadyLiquid(Liquid) : new IdealGasStream(Gas, 1.3, Temperature(y), 1.5e-5);

        public bool TryRates(ReadOnlySpan<double> y, bool isLiquid, double flow, double step, Span<double> rates)
        {
            var t = Temperature(y);
            (rates[0], rates[1]) = (-flow, -flow * (isLiquid ? Heat * (t - Zero) + Pressure(t) / Liquid : Heat * (t - Zero) + Latent));
            return true;
        }

        static double Pressure(double t) => 57e5 * Math.Exp(-1_900 * (1 / t - 1 / Zero));

        double LiquidMass(double mass, double t)
        {
            var vapour = Pressure(t) / (Gas * t);
            return (mass - vapour * volume) / (1 - vapour / Liquid);
        }

        double Energy(double mass, double t)
        {
            var liquid = LiquidMass(mass, t);
            return mass * Heat * (t - Zero) + (mass - liquid) * (Latent - Gas * t);
        }

        double Temperature(ReadOnlySpan<double> y)
        {
            double low = 150, high = 320;
            for (var i = 0; i < 60; i++)
            {
                var middle = 0.5 * (low + high);
                if (Energy(y[0], middle) > y[1]) high = middle;
                else low = middle;
            }
            return 0.5 * (low + high);
        }
    }

    /// <summary>Agent of 1407 kg/m³ and 3.9 bar vapour pressure, whose vapour has no mass, at 293.15 K under nitrogen that dissolves by Henry's law, 3e-9 kg/(kg·Pa).</summary>
    sealed class SaturatedBottle(bool comesOut) : IExpandingBottle
    {
        const double Volume = 0.006, Vapour = 3.9e5, Liquid = 1_407, Henry = 3e-9, Gas = 296.8, Kelvin = 293.15, Full = 5.5, Over = 2.5e6 - Vapour;

        public int Length => 2;

        public double Charge => Full;

        public void Start(Span<double> y) => (y[0], y[1]) = (Full, Over * (Space(Full) / (Gas * Kelvin) + (comesOut ? Henry * Full : 0)));

        public double Agent(ReadOnlySpan<double> y) => y[0];

        public bool TryDraw(ReadOnlySpan<double> y, bool isLiquid, out Draw draw)
        {
            draw = new(Vapour + Partial(y), Kelvin, Kelvin, y[0] / Liquid, Liquid, isLiquid ? 1 : 1e-3);
            return true;
        }

        public IStream? Stream(ReadOnlySpan<double> y, bool isLiquid, double lowest) => isLiquid ? new SteadyLiquid(Liquid) : new IdealGasStream(Gas, 1.4, Kelvin, 1.8e-5);

        public bool TryRates(ReadOnlySpan<double> y, bool isLiquid, double flow, double step, Span<double> rates)
        {
            (rates[0], rates[1]) = isLiquid ? (-flow, comesOut ? -flow * Henry * Partial(y) : 0) : (-1e-3 * flow, -flow);
            return true;
        }

        static double Space(double mass) => Volume - mass / Liquid;

        double Partial(ReadOnlySpan<double> y) => y[1] / (Space(y[0]) / (Gas * Kelvin) + (comesOut ? Henry * y[0] : 0));
    }

    /// <summary>A liquid that keeps its density and does not boil.</summary>
    sealed class SteadyLiquid(double density) : IStream
    {
        public double Kink => double.NaN;

        public double Floor => double.NaN;

        public StreamState At(double pressure) => new(density, 293.15, 0, 1e-4);

        public INozzleWay Nozzle(double stagnation) => new SteadyWay(density, stagnation);

        sealed class SteadyWay(double density, double stagnation) : INozzleWay
        {
            public bool HasDelay => false;

            public (double Volume, double Work) Equilibrium(double pressure) => (1 / density, (stagnation - pressure) / density);

            public (double Volume, double Work) Frozen(double pressure) => Equilibrium(pressure);

            public double Part(double ratio) => 1;
        }
    }
}
