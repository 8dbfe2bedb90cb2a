using System.Collections.Immutable;
using FlowCalc.Coverage;
using FlowCalc.Discharge;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Coverage;

/// <summary>What the rules of a coverage look at.</summary>
sealed class JudgedCoverage(
    Layout layout, CoverageResult result, DischargeResult? discharge, FlowResult? flow, UnitSystem units, ImmutableArray<Limit> limits, CancellationToken cancellationToken)
    : JudgedLayout(layout, units, limits, cancellationToken)
{
    const int CaseDigits = 6;

    public CoverageResult Result => result;

    public DischargeResult? Discharge => discharge;

    public FlowResult? Flow => flow;

    public override double? Reservoir => null;

    /// <summary>What the document left open of the flow and of the coverage.</summary>
    public ImmutableArray<Assumption> Assumptions => [.. discharge?.Assumptions ?? flow?.Assumptions ?? Layout.Assumptions, .. result.Assumptions];

    public string Text(Length length) => Wording.Of(length, Units);

    public string Text(Angle angle) => Wording.Of(angle.Radians, QuantityKind.Angle, Units);

    public string Text(Mass mass) => Wording.Of(mass.Kilograms, QuantityKind.Mass, Units);

    public string Text(Duration time) => Wording.Of(time.Seconds, QuantityKind.Time, Units);

    public string Text(Temperature temperature) => Wording.Of(temperature.Kelvins, QuantityKind.Temperature, Units);

    /// <summary>The name of a case of the discharge; null for none.</summary>
    public string? CaseName(int? at) => at is { } index && discharge is not null
        ? $"{QuantityWriter.Text(discharge.Cases[index].Temperature.Kelvins, QuantityKind.Temperature, Units, CaseDigits)}, {Wording.Id(discharge.Cases[index].Attitude.Name)}" : null;

    /// <summary>Whether the document states the limit of a code itself.</summary>
    public bool IsStated(string code) => Layout.Limits.Any(limit => limit.Code == code);
}
