using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Upkeep;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Upkeep;

/// <summary>What the rules of upkeep look at.</summary>
sealed class JudgedUpkeep(Layout layout, UpkeepResult result, UnitSystem units, ImmutableArray<Limit> limits)
{
    public Layout Layout => layout;

    public ServiceBook Book => layout.Service!;

    public UpkeepResult Result => result;

    public Limit Limit(string code) => limits.Single(limit => limit.Code == code);

    public string Text(double si, QuantityKind kind) => Wording.Of(si, kind, units);

    /// <summary>An absolute pressure, written as gauge.</summary>
    public string Gauge(Pressure absolute) => Text((absolute - layout.AmbientPressure).Pascals, QuantityKind.Pressure);

    public string Celsius(Temperature temperature) => Text(temperature.Kelvins, QuantityKind.Temperature);

    /// <summary>A day, ISO 8601.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
