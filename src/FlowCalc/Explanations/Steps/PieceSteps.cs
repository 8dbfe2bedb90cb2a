using FlowCalc.Layouts;
using FlowCalc.Routes;

namespace FlowCalc.Explanations;

/// <summary>One piece of tube: its allowances, lengths, and the marks of its bends.</summary>
internal static class PieceSteps
{
    /// <summary>Writes a piece down.</summary>
    /// <param name="log">Where to; it stands at the run.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="run">The run.</param>
    /// <param name="piece">The piece.</param>
    /// <param name="firstBend">Number of its first bend among those of the run, from 0.</param>
    /// <param name="bench">How it is cut.</param>
    public static void Add(StepLog log, Layout layout, Run run, TubePiece piece, int firstBend, Bench bench)
    {
        var (name, cuts) = ($"piece {piece.Number}", PieceCutter.CutsOf(run));
        var isFirst = piece.Number == 1;
        var isLast = piece.Number > cuts.Length;
        var (start, end) = (isFirst ? 0 : Place(cuts[piece.Number - 2].Item), isLast ? run.Length.Meters : Place(cuts[piece.Number - 1].Item));
        var (before, behind) = (piece.Start.Allowance.Meters, piece.End.Allowance.Meters);
        if (isFirst) AtPoint(log, $"{name}: start", PieceCutter.JointAt(layout.Points[run.From], run.StartJoint, bench), before);
        else AtFitting(log, $"{name}: start", cuts[piece.Number - 2].Item, before);
        if (isLast) AtPoint(log, $"{name}: end", PieceCutter.JointAt(layout.Points[run.To], run.EndJoint, bench), behind);
        else AtFitting(log, $"{name}: end", cuts[piece.Number - 1].Item, behind);

        log.Add(PieceEquations.Exact, name, piece.Exact.Meters, end, start, before, behind);
        if (piece is { Cut: { } cut, Sawn: { } sawn })
        {
            log.Add(PieceEquations.Cut, name, cut.Meters, piece.Exact.Meters);
            log.Add(PieceEquations.Sawn, name, sawn.Meters, cut.Meters, bench.Squaring);
        }
        if (!piece.Bends.IsEmpty) Bends(log, run, piece, firstBend, name, start, end);
    }

    static void Bends(StepLog log, Run run, TubePiece piece, int next, string name, double start, double end)
    {
        var placed = PlacedBend.Of(run);
        for (var bend = 0; bend < piece.Bends.Length; bend++, next++)
        {
            var (mark, at) = (piece.Bends[bend], placed[next]);
            var part = $"{name}, bend {next + 1}";
            log.Sum(PieceEquations.PlaceAlongRun, part, at.Start, Before(run, next));
            log.Add(PieceEquations.Mark, part, mark.At.Meters, at.Start, start, piece.Start.Allowance.Meters);
            if (bend > 0) log.Add(PieceEquations.Straight, $"{part}: straight before", piece.Straights[bend].Meters, at.Start, placed[next - 1].End);
            log.Add(PieceEquations.ArcEnd, part, at.End, at.Start, mark.Arc.Meters);
        }
        var last = log.Add(PieceEquations.TubeEnd, name, end + piece.End.Allowance.Meters, end, piece.End.Allowance.Meters);
        log.Add(PieceEquations.Straight, $"{name}: straight behind the last bend", piece.Straights[^1].Meters, last, placed[next - 1].End);
    }

    static IEnumerable<double> Before(Run run, int bend)
    {
        for (var at = 0; at < bend; at++)
        {
            yield return run.Route!.Straights[at].Meters;
            yield return run.Bends[at].Arcs.Meters;
        }
        yield return run.Route!.Straights[bend].Meters;
    }

    static void AtPoint(StepLog log, string part, Joint joint, double allowance)
    {
        if (joint.CentreToStop is { } stop) log.Add(PieceEquations.Stop, part, allowance, stop.Meters);
        else if (joint.Insertion is { } insertion) log.Add(PieceEquations.Insertion, part, allowance, insertion.Meters);
    }

    static void AtFitting(StepLog log, string part, PlacedFitting placed, double allowance)
    {
        if (placed.Fitting.CentreToStop is { } stop) log.Add(PieceEquations.Stop, part, allowance, stop.Meters);
        else if (placed.Fitting.Length is { } length) log.Add(PieceEquations.HalfLength, part, allowance, length.Meters);
    }

    static double Place(PlacedFitting placed) => placed.At!.Value.Meters;
}
