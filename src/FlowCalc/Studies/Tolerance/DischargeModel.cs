using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Limits;

namespace FlowCalc.Studies.Tolerance;

/// <summary>The discharge of every sample, in one case or in all.</summary>
internal sealed class DischargeModel : StudyModel
{
    const string NotSolved = "The computation did not come to an end.";

    readonly ImmutableArray<Limit> limits;
    readonly ImmutableArray<(double Temperature, Attitude Attitude)> cases;

    /// <summary>The discharge of a design.</summary>
    /// <param name="layout">The design, whose supply is a bottle.</param>
    /// <param name="isEveryCase">Whether every case is followed; else the first.</param>
    public DischargeModel(Layout layout, bool isEveryCase)
        : base(layout)
    {
        limits = DefaultLimits.For(layout.Limits, LimitUse.Discharge);
        var list = CaseList.Of(layout);
        cases = [.. list.Temperatures.SelectMany(temperature => list.Attitudes.Select(attitude => (temperature, attitude))).Take(isEveryCase ? int.MaxValue : 1)];
        Cases = [.. cases.Select(one => (one.Temperature, (Attitude?)one.Attitude))];
    }

    /// <inheritdoc/>
    public override ImmutableArray<(double Temperature, Attitude? Attitude)> Cases { get; }

    /// <inheritdoc/>
    public override ImmutableArray<Figure> CaseFigures { get; } =
        [Figure.Time95, Figure.RequiredTime, Figure.LastArrival, Figure.LiquidEnd, Figure.End, Figure.PeakMassFlow, Figure.LeftBehind, Figure.LowestDeviation, Figure.HighestDeviation];

    /// <inheritdoc/>
    public override ImmutableArray<Figure> MainFigures { get; } = [Figure.Time95, Figure.LowestDeviation, Figure.LastArrival];

    /// <inheritdoc/>
    public override ImmutableArray<Figure> NozzleFigures { get; } = [Figure.Share, Figure.Deviation, Figure.Mass, Figure.Arrival, Figure.Time95];

    /// <inheritdoc/>
    public override void Answer(Layout sample, double warmer, Span<double> row, Span<string?> failures, FindingTally tally, CancellationToken cancellationToken)
    {
        var discharge = LayoutDischarge.SolveBare(sample, cases, warmer, cancellationToken);
        for (var at = 0; at < discharge.Cases.Length; at++)
        {
            var one = discharge.Cases[at];
            var part = row.Slice(at * WidthOfCase, WidthOfCase);
            if (one.Failure is { } failure)
            {
                part.Fill(double.NaN);
                failures[at] = failure.Kind == DischargeFailureKind.NotSolved ? NotSolved : failure.Message;
            }
            else Fill(part, one, discharge.Requirement is not null);
        }
        DischargeFindings.Tally(sample, discharge, limits, tally, cancellationToken);
    }

    static void Fill(Span<double> row, DischargeCase one, bool isRequired)
    {
        var next = 0;
        row[next++] = Seconds(one.Time95);
        row[next++] = isRequired ? Seconds(one.RequiredTime) : double.NaN;
        row[next++] = Extreme(one.Nozzles.Select(nozzle => (double?)Seconds(nozzle.Arrival)), greatest: true);
        row[next++] = Seconds(one.LiquidEnd);
        row[next++] = one.End.Seconds;
        row[next++] = one.PeakMassFlow.KilogramsPerSecond;
        row[next++] = one.LeftInBottle.Kilograms + one.LeftInTubes.Kilograms;
        row[next++] = Extreme(one.Nozzles.Select(nozzle => nozzle.Deviation), greatest: false);
        row[next++] = Extreme(one.Nozzles.Select(nozzle => nozzle.Deviation), greatest: true);
        foreach (var nozzle in one.Nozzles)
        {
            row[next++] = nozzle.Share;
            row[next++] = nozzle.Deviation ?? double.NaN;
            row[next++] = nozzle.Mass.Kilograms;
            row[next++] = Seconds(nozzle.Arrival);
            row[next++] = Seconds(nozzle.Time95);
        }
        foreach (var zone in one.Zones)
        {
            row[next++] = zone.Share;
            row[next++] = zone.Deviation ?? double.NaN;
        }
    }
}
