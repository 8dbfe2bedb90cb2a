using System.Collections.Immutable;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Studies.Tolerance;

/// <summary>What is worked out of every sample: a row of figures, case by case; in each the case's own, then those of the nozzles, then those of the zones.</summary>
/// <param name="layout">The design.</param>
internal abstract class StudyModel(Layout layout)
{
    /// <summary>Figures of a zone.</summary>
    public static readonly ImmutableArray<Figure> ZoneFigures = [Figure.Share, Figure.Deviation];

    /// <summary>The cases that are followed; a steady flow is one without an attitude.</summary>
    public abstract ImmutableArray<(double Temperature, Attitude? Attitude)> Cases { get; }

    /// <summary>Figures of a case as a whole.</summary>
    public abstract ImmutableArray<Figure> CaseFigures { get; }

    /// <summary>Those of them whose inputs are weighed.</summary>
    public abstract ImmutableArray<Figure> MainFigures { get; }

    /// <summary>Figures of a nozzle.</summary>
    public abstract ImmutableArray<Figure> NozzleFigures { get; }

    /// <summary>Points that are nozzles, in the document's order.</summary>
    public ImmutableArray<int> Nozzles { get; } = [.. Enumerable.Range(0, layout.Points.Length).Where(point => layout.Points[point] is Nozzle)];

    /// <summary>Figures of one case.</summary>
    public int WidthOfCase => CaseFigures.Length + Nozzles.Length * NozzleFigures.Length + layout.Zones.Length * ZoneFigures.Length;

    /// <summary>Figures of all cases.</summary>
    public int Width => Cases.Length * WidthOfCase;

    /// <summary>Works a sample out.</summary>
    /// <param name="sample">Its layout.</param>
    /// <param name="warmer">How much warmer than the design it is, K.</param>
    /// <param name="row">Takes the figures: NaN for one that is not there, infinite for an instant that never comes.</param>
    /// <param name="failures">Takes by case why it has no answer; null where it has one.</param>
    /// <param name="tally">Counts what is found.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    public abstract void Answer(Layout sample, double warmer, Span<double> row, Span<string?> failures, FindingTally tally, CancellationToken cancellationToken);

    /// <summary>An instant, s; infinite where it never comes.</summary>
    /// <param name="instant">The instant; null for never.</param>
    protected static double Seconds(Duration? instant) => instant?.Seconds ?? double.PositiveInfinity;

    /// <summary>The number that is least, or greatest, of those that are there; NaN without any.</summary>
    /// <param name="values">The numbers.</param>
    /// <param name="greatest">Whether the greatest is asked.</param>
    protected static double Extreme(IEnumerable<double?> values, bool greatest)
    {
        var most = double.NaN;
        foreach (var value in values)
            if (value is { } known && (double.IsNaN(most) || (greatest ? known > most : known < most))) most = known;
        return most;
    }
}
