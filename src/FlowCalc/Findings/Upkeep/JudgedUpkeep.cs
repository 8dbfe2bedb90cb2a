using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Upkeep;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Upkeep;

/// <summary>What the rules of upkeep look at.</summary>
sealed class JudgedUpkeep(Layout layout, UpkeepResult result, UnitSystem units, ImmutableArray<Limit> limits) : JudgedAnswer(layout, units, limits)
{
    public ServiceBook Book => Layout.Service!;

    public UpkeepResult Result => result;

    public string Text(double si, QuantityKind kind) => Wording.Of(si, kind, Units);

    /// <summary>An absolute pressure, written as gauge.</summary>
    public string Gauge(Pressure absolute) => Wording.Gauge(absolute.Pascals, this);

    public string Celsius(Temperature temperature) => Text(temperature.Kelvins, QuantityKind.Temperature);

    /// <summary>A day, ISO 8601.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
