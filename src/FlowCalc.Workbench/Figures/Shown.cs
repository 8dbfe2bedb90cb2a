using System.Globalization;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Workbench.Figures;

/// <summary>Numbers as people read them, on pages, drawings and reports alike: rounded, with their unit.</summary>
/// <param name="System">The system of units.</param>
/// <param name="Ambient">Absolute pressure of the surroundings, from which pressures are shown.</param>
public sealed record Shown(UnitSystem System, Pressure Ambient)
{
    /// <summary>Significant digits of what is computed.</summary>
    public const int Digits = 3;

    /// <summary>What stands where there is no number.</summary>
    public const string None = "–";

    /// <summary>An absolute pressure, as gauge.</summary>
    public string Gauge(Pressure absolute) => Of(absolute.Pascals - Ambient.Pascals, QuantityKind.Pressure);

    /// <summary>A difference of pressures.</summary>
    public string Of(Pressure difference) => Of(difference.Pascals, QuantityKind.Pressure);

    /// <summary>A mass flow.</summary>
    public string Of(MassFlow flow) => Of(flow.KilogramsPerSecond, QuantityKind.MassFlow);

    /// <summary>A volume flow.</summary>
    public string Of(VolumeFlow flow) => Of(flow.CubicMetersPerSecond, QuantityKind.VolumeFlow);

    /// <summary>A mass.</summary>
    public string Of(Mass mass) => Of(mass.Kilograms, QuantityKind.Mass);

    /// <summary>A time; a dash where there is none.</summary>
    public string Of(Duration? time) => time is { } known ? Of(known.Seconds, QuantityKind.Time) : None;

    /// <summary>A length.</summary>
    public string Of(Length length) => Of(length.Meters, QuantityKind.Length);

    /// <summary>A speed.</summary>
    public string Of(Speed speed) => Of(speed.MetersPerSecond, QuantityKind.Speed);

    /// <summary>A temperature.</summary>
    public string Of(Temperature temperature) => Of(temperature.Kelvins, QuantityKind.Temperature);

    /// <summary>A value of any kind; a pressure gauge.</summary>
    /// <param name="si">The value in the SI base unit of its kind.</param>
    /// <param name="kind">What it measures.</param>
    public string Of(double si, QuantityKind kind)
    {
        var text = QuantityWriter.Text(si, kind, System, Digits);
        return kind is QuantityKind.Area or QuantityKind.Volume or QuantityKind.WettingRate or QuantityKind.Density ? Raised(text) : text;
    }

    /// <summary>A part of a whole, <c>14.3 %</c>.</summary>
    public static string Percent(double part) => (100 * part).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    /// <summary>A deviation with its sign, <c>−7.3 %</c>; a dash where there is none.</summary>
    public static string Deviation(double? part) => part is { } known ? (100 * known).ToString("+0.0;\u22120.0;0.0", CultureInfo.InvariantCulture) + " %" : None;

    /// <summary>A count, all its digits.</summary>
    public static string Count(long count) => count.ToString(CultureInfo.InvariantCulture);

    /// <summary>A plain number.</summary>
    public static string Number(double number) => number.ToString("G4", CultureInfo.InvariantCulture);

    // Units as printed: a square is no 2 behind the letter.
    static string Raised(string text) => text.Replace("m2", "m²", StringComparison.Ordinal).Replace("ft2", "ft²", StringComparison.Ordinal)
        .Replace("in2", "in²", StringComparison.Ordinal).Replace("m3", "m³", StringComparison.Ordinal).Replace("ft3", "ft³", StringComparison.Ordinal);
}
