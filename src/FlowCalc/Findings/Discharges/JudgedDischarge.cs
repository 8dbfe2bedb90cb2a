using System.Collections.Immutable;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>What the rules of a discharge look at.</summary>
sealed class JudgedDischarge(Layout layout, Bottle bottle, DischargeResult discharge, UnitSystem units, ImmutableArray<Limit> limits, CancellationToken cancellationToken)
    : JudgedLayout(layout, units, limits, cancellationToken)
{
    // Cases may lie closer together than the three digits of a sentence tell apart.
    const int CaseDigits = 6;

    public Bottle Bottle { get; } = bottle;

    public DischargeResult Discharge { get; } = discharge;

    public override double? Reservoir => Discharge.Cases.Max(one => one.StartPressure?.Pascals);

    /// <summary>The fill of all bottles, kg.</summary>
    public double Contents { get; } = bottle.Fill.Kilograms * bottle.Count;

    /// <summary>The cases that have a discharge, with their index.</summary>
    public IEnumerable<(int At, DischargeCase Case)> Answered
    {
        get
        {
            for (var at = 0; at < Discharge.Cases.Length; at++)
            {
                Cancellation.ThrowIfCancellationRequested();
                if (Discharge.Cases[at].Failure is null) yield return (at, Discharge.Cases[at]);
            }
        }
    }

    /// <summary>What comes to the nozzles, in a word.</summary>
    public string Matter => Layout.Agent.IsExpanding ? "agent" : "liquid";

    public string SupplyId => PointId(SupplyPoint);

    public string TemperatureOf(DischargeCase one) => QuantityWriter.Text(one.Temperature.Kelvins, QuantityKind.Temperature, Units, CaseDigits);

    /// <summary>A case as findings name it, such as <c>-15 °C, on the roof</c>.</summary>
    public string Name(DischargeCase one) => $"{TemperatureOf(one)}, {Wording.Id(one.Attitude.Name)}";

    /// <summary>Agent out of all nozzles, kg.</summary>
    public static double Delivered(DischargeCase one)
    {
        double sum = 0;
        foreach (var nozzle in one.Nozzles) sum += nozzle.Mass.Kilograms;
        return sum;
    }

    public static bool IsUpright(Attitude attitude) => attitude.Gravity is { X: 0, Y: 0, Z: < 0 };
}
