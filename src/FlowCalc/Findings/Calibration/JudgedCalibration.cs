using System.Collections.Immutable;
using FlowCalc.Calibration;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Calibration;

/// <summary>What the rules of a test look at.</summary>
sealed class JudgedCalibration(Layout layout, CalibrationResult result, UnitSystem units, ImmutableArray<Limit> limits) : JudgedAnswer(layout, units, limits)
{
    public CalibrationResult Result => result;

    public Measured Measured => Layout.Measured!;

    public CauseFit Best => result.Best!;

    public string Text(double si, QuantityKind kind) => Wording.Of(si, kind, Units);

    /// <summary>A reading as it stands in a sentence.</summary>
    public string Text(MeasuredKind kind, double value) => kind switch
    {
        MeasuredKind.Flow => Text(value / Measured.Agent.Density(Measured.Temperature.Kelvins), QuantityKind.VolumeFlow),
        MeasuredKind.Pressure => Wording.Gauge(value, this),
        _ => Text(value, QuantityKind.Time),
    };

    /// <summary>The id of a reading's point.</summary>
    public string Place(MeasuredReading reading) => reading.Point < 0 ? "bottle" : Layout.Points[reading.Point].Id;

    /// <summary>The ids that a cause concerns.</summary>
    public ImmutableArray<string> Where(CauseFit cause) => cause.Run >= 0 ? [Layout.Runs[cause.Run].Id] : [];

    /// <summary>A cause in a few words, such as <c>a loss in R12</c>.</summary>
    public string Words(CauseFit cause) => cause.Kind switch
    {
        CauseKind.AsDrawn => "the layout as drawn",
        CauseKind.SupplyPressure => "another pressure of the supply",
        CauseKind.Roughness => "another roughness",
        CauseKind.Bore => "other bores",
        CauseKind.Nozzles => "other nozzles",
        _ => $"a loss in {Wording.Id(Layout.Runs[cause.Run].Id)}",
    };

    /// <summary>An unknown with its interval, such as <c>K 12.3 (9.8 to 15.2)</c>.</summary>
    public string Text(FittedUnknown unknown) => unknown.Kind == UnknownKind.Roughness
        ? $"{Text(unknown.Value, QuantityKind.Length)} ({Text(unknown.Low, QuantityKind.Length)} to {Text(unknown.High, QuantityKind.Length)})"
        : $"{Wording.Number(unknown.Value)} ({Wording.Number(unknown.Low)} to {Wording.Number(unknown.High)})";

    /// <summary>A make of nozzle in a sentence.</summary>
    public string Name(NozzleGroup group) => group.Type is { } type ? Wording.Id(type) : Wording.Ids([.. group.Points.Select(point => Layout.Points[point].Id)]);
}
