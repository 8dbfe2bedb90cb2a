using FlowCalc.Explanations;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Api.Answers;

/// <summary>Writes the values of an answer in one system of units. Every number of an answer passes here, and none that is not finite gets through.</summary>
internal sealed class UnitWriter
{
    static readonly UnitWriter[] BySystem = [.. Enum.GetValues<UnitSystem>().Select(system => new UnitWriter(system))];

    readonly UnitScale pressure, massFlow, volumeFlow, speed, time, mass;

    UnitWriter(UnitSystem system)
    {
        System = system;
        pressure = new(QuantityKind.Pressure, system);
        massFlow = new(QuantityKind.MassFlow, system);
        volumeFlow = new(QuantityKind.VolumeFlow, system);
        speed = new(QuantityKind.Speed, system);
        time = new(QuantityKind.Time, system);
        mass = new(QuantityKind.Mass, system);
    }

    /// <summary>The system of units.</summary>
    public UnitSystem System { get; }

    /// <summary>The writer of a system.</summary>
    public static UnitWriter Of(UnitSystem system) => BySystem[(int)system];

    /// <summary>A difference of pressures.</summary>
    public Quantity Of(Pressure difference) => pressure.Of(difference.Pascals);

    /// <summary>An absolute pressure, written as gauge.</summary>
    public Quantity Gauge(Pressure absolute, Pressure ambient) => pressure.Of(absolute.Pascals - ambient.Pascals);

    /// <summary>An absolute pressure, whose unit says so.</summary>
    public Quantity Absolute(double pascals) => Finite(QuantityWriter.WriteAbsolute(pascals, System), QuantityKind.Pressure);

    public Quantity Of(MassFlow flow) => massFlow.Of(flow.KilogramsPerSecond);

    public Quantity Of(VolumeFlow flow) => volumeFlow.Of(flow.CubicMetersPerSecond);

    public Quantity Of(Speed velocity) => speed.Of(velocity.MetersPerSecond);

    public Quantity Of(Duration duration) => time.Of(duration.Seconds);

    public Quantity? Of(Duration? duration) => duration is { } known ? Of(known) : null;

    public Quantity Of(Mass matter) => mass.Of(matter.Kilograms);

    /// <summary>A single value of any kind; with the fewest digits that read back to it.</summary>
    public Quantity Of(double si, QuantityKind kind) => Finite(QuantityWriter.Write(si, kind, System), kind);

    public Quantity Of(Length length) => Of(length.Meters, QuantityKind.Length);

    public Quantity? Of(Length? length) => length is { } known ? Of(known) : null;

    /// <summary>A measure; a plain number has the unit 1.</summary>
    public Quantity Of(Measure measure) => measure.Kind is { } kind ? Of(measure.Si, kind) : new Quantity(Plain(measure.Si), "1");

    public Quantity? Of(Measure? measure) => measure is { } known ? Of(known) : null;

    /// <summary>A value of an equation.</summary>
    public Quantity Of(double si, SymbolUnit unit)
    {
        var (value, symbol) = unit.Write(si, System);
        return new Quantity(Plain(value), symbol);
    }

    static Quantity Finite(in WrittenQuantity written, QuantityKind kind) =>
        double.IsFinite(written.Value) ? new Quantity(written.Value, written.Unit) : throw new NotFiniteException(kind.ToString());

    /// <summary>A plain number.</summary>
    public static double Plain(double number) => double.IsFinite(number) ? number : throw new NotFiniteException("number");

    public static double? Plain(double? number) => number is { } known ? Plain(known) : null;
}
