using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Benchmarks;

/// <summary>Times of properties, of the tables of an expansion, and of whole discharges of gases and flashing agents in the library.</summary>
internal static class ExpandingFigures
{
    const double Ambient = 101_325;
    const double Volume = 0.01;
    const int Calls = 1_000;

    // Fill, kg/m³, in a bottle at 20 °C.
    static readonly (string Id, double Fill)[] Agents = [("carbon-dioxide", 680), ("HFC-23", 700), ("HFC-227ea", 900), ("FK-5-1-12", 1000), ("nitrogen", 220), ("IG-541", 260)];

    public static void Print()
    {
        foreach (var (id, fill) in Agents)
        {
            var fluid = Fluid.Of(id);
            var sink = 0.0;
            // A thousand states by the fast form, and for those that condense a thousand saturated ones: microseconds a call.
            QuickFigures.Line($"properties-{id}", QuickFigures.Time(() =>
            {
                for (var i = 0; i < Calls; i++) sink += fluid.At(280 + 0.05 * i, 20 + 0.03 * i).Pressure;
            }) / Calls);
            if (fluid.Saturation is { } curve)
                QuickFigures.Line($"saturation-{id}", QuickFigures.Time(() =>
                {
                    for (var i = 0; i < Calls; i++) sink += curve.AtPressure((0.3 + 0.6e-3 * i) * curve.HighestPressure).LiquidDensity;
                }) / Calls);
            if (double.IsNaN(sink)) throw new InvalidOperationException($"{id}: a property that was timed is none.");

            var bottle = Bottle(fluid, fill);
            QuickFigures.Line($"expansion-{id}", QuickFigures.Time(() => _ = Table(bottle)));
            var kind = fluid.Saturation is null ? "gas" : "flashing";
            foreach (var nozzles in (int[])[2, 10])
                QuickFigures.Line($"discharge-{kind}-{nozzles}-{id}", QuickFigures.Time(() => Discharge(bottle, id, nozzles)));
        }
    }

    // Those that nitrogen drives are charged to 25 bar.
    static IExpandingBottle Bottle(Fluid fluid, double fill)
    {
        var heat = new ShellHeat { Area = 0.25, Capacity = 5_000 };
        if (NitrogenSolubility.Of(fluid.Id) is not { } solubility) return new PureBottle(fluid, Volume, fill * Volume, 293.15, heat);
        var contents = new NitrogenEquilibrium(fluid, solubility).Charge(Volume, fill * Volume, 293.15, 25e5);
        return new NitrogenBottle(fluid, solubility, Volume, fill * Volume, contents.NitrogenInLiquid, contents.NitrogenInGas, 293.15, 0.3, heat);
    }

    static ExpansionTable Table(IExpandingBottle bottle)
    {
        var y = new double[bottle.Length];
        bottle.Start(y);
        return bottle.TryDraw(y, isLiquid: true, out var draw)
            && bottle.Stream(y, isLiquid: true, Ambient / 2) is { } stream
            && ExpansionTable.TryBuild(stream, 1.04 * draw.Pressure, Ambient, NozzleModel.Delayed) is { } table
                ? table
                : throw new InvalidOperationException("No table.");
    }

    static void Discharge(IExpandingBottle bottle, string id, int nozzles)
    {
        var builder = new NetworkBuilder(2 * nozzles);
        List<double> area = [], volume = [];
        int Add(int parent, double bore, double length)
        {
            area.Add(Math.PI / 4 * bore * bore);
            volume.Add(area[^1] * length);
            return builder.AddRun(parent, new(bore, length, 1e-3, 0, 1.5 * Resistance.PerCoefficient(bore)));
        }

        var at = Add(-1, 0.012, 0.5);
        for (var i = 0; i < nozzles; i++)
        {
            if (i < nozzles - 1) at = Add(at, 0.012 - 0.0005 * i, 0.6);
            builder.AddNozzle(Add(at, 0.006, 0.8), Orifice.EffectiveArea(0.002, 0.8));
        }
        var course = ExpandingRun.Of(new ExpandingProblem
        {
            Network = builder.Build(),
            Volume = [.. volume],
            Area = [.. area],
            Ambient = Ambient,
            Bottle = bottle,
            FloorPressure = id == "carbon-dioxide" ? 517_950 : 0,
            Thresholds = [0.9 * bottle.Charge],
            VolumeLeft = 1e-5,
        }, CancellationToken.None);
        if (course.Failure is { } failure) throw new InvalidOperationException($"{id}: {failure}");
    }
}
