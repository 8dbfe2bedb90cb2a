using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Calibration;

/// <summary>A test in which the whole discharge of the bottle is timed, upright, with the liquid of the test in it.</summary>
sealed class BottleRig : ITestRig
{
    readonly ImmutableArray<(double Temperature, Attitude Attitude)> cases;
    readonly CancellationToken cancellation;

    public BottleRig(Layout layout, Measured measured, CancellationToken cancellationToken)
    {
        cases = [(measured.Temperature.Kelvins, CaseList.Upright)];
        cancellation = cancellationToken;
        Tested = layout with { Agent = measured.Agent, Temperature = measured.Temperature, Requirement = null, Supply = new BottleSupply(Refilled(layout, measured)) };
    }

    // As high in the bottle as the agent stands: a gauge glass, a scale's mark or a jug is filled to a volume, which the document's assumptions say.
    static Bottle Refilled(Layout layout, Measured measured)
    {
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var usual = TemperatureReader.Usual;
        var own = ((LiquidAgent)layout.Agent).Density(usual);
        return bottle with { Fill = bottle.Fill * (measured.Agent.Density(usual) / own) };
    }

    /// <inheritdoc/>
    public Layout Tested { get; }

    /// <inheritdoc/>
    public double[] Read(Layout changed, double pressureFactor)
    {
        var bottle = ((BottleSupply)changed.Supply).Bottle;
        var ambient = changed.AmbientPressure;
        var charged = changed with { Supply = new BottleSupply(bottle with { ChargePressure = ambient + (bottle.ChargePressure - ambient) * pressureFactor }) };
        var one = LayoutDischarge.SolveBare(charged, cases, 0, cancellation).Cases[0];
        if (one.Failure is { } failure) throw new TestNotSolvedException(failure.Message);
        var last = 0.0;
        foreach (var nozzle in one.Nozzles)
        {
            if (nozzle.Arrival is null) continue;
            if (nozzle.LiquidEnd is not { } end) throw new TestNotSolvedException("The discharge ends before gas has come to every nozzle, so that it has no such time.");
            last = Math.Max(last, end.Seconds);
        }
        return [last];
    }
}
