using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Routes;

namespace FlowCalc.Findings.CutLists;

/// <summary>Ends of pieces: insertions that are not given, straights too short for a nut, fittings that leave no tube.</summary>
static class Joints
{
    public static void Find(JudgedCutList judged, FindingList findings)
    {
        var limit = judged.Limit(FindingCodes.JointStraightShort);
        List<Hit>? unknown = null, tight = null, without = null;
        foreach (var (index, run, cut) in judged.Runs)
            foreach (var piece in cut.Pieces)
            {
                if (piece.Cut is null) (without ??= []).Add(new Hit(index, run.Id, Severity.Fail, -piece.Exact.Meters, piece.Exact.Meters, 0));
                foreach (var end in (ReadOnlySpan<PieceEnd>)[piece.Start, piece.End])
                {
                    if (!end.IsKnown) (unknown ??= []).Add(new Hit(index, end.Fitting, Severity.Note, 0, end.Allowance.Meters, 0));
                    if (end.Room is { } room) AddTight(limit, run, index, room.Meters, ref tight);
                }
            }
        findings.Add(FindingCodes.PieceWithoutLength, "geometry", QuantityKind.Length, "piece", without, hit =>
            $"The fittings at the ends of a piece of {Wording.Id(hit.Id)} need {judged.Text(-hit.Measured)} more than lies between them, so that no tube is left");
        findings.Add(FindingCodes.JointStraightShort, limit.Source, QuantityKind.Length, "place", tight, hit => Sentence(judged, hit));
        AddUnknown(unknown, findings, judged);
    }

    // An end that does not say how much its fitting takes is one note, however many there are: with the default, the list is a list all the same.
    static void AddUnknown(List<Hit>? unknown, FindingList findings, JudgedCutList judged)
    {
        if (unknown is null) return;
        var places = unknown.Select(hit => hit.Id).Distinct().Take(FindingList.MostIds).ToArray();
        var taken = judged.Layout.Cutting?.Insertion is { } stated ? judged.Text(stated.Meters) : "no insertion";
        findings.Add(new Finding(FindingCodes.InsertionUnknown, Severity.Note, [.. places],
            $"{Wording.Count(unknown.Count, "end")} of tube {(unknown.Count == 1 ? "goes" : "go")} into a fitting that states neither insertion nor centreToStop, the first of them {Wording.Id(unknown[0].Id)}: "
            + $"{taken} is taken; it belongs to the make, so measure it or give the maker's figure.",
            new Measure(unknown.Count, null), null, "the document leaves them open", null), unknown[0].Item);
    }

    static void AddTight(Limit limit, Layouts.Run run, int index, double room, ref List<Hit>? hits)
    {
        // Without an outside diameter only a straight below nothing can be told.
        if (run.Tube.OutsideDiameter is null && room >= 0) return;
        var outside = JudgedCutList.Outside(run.Tube);
        var (severity, step) = Grading.Of(limit, room / outside, lowerIsWorse: true);
        if (severity != Severity.Pass) (hits ??= []).Add(new Hit(index, run.Id, severity, -room, room, step * outside));
    }

    static string Sentence(JudgedCutList judged, Hit hit) => hit.Measured < 0
        ? $"A bend of {Wording.Id(hit.Id)} begins {judged.Text(-hit.Measured)} within what a fitting takes or grips of its tube"
        : $"A bend of {Wording.Id(hit.Id)} leaves {judged.Text(hit.Measured)} of straight tube for the nut of a fitting, limit {judged.Text(hit.Bound)}";
}
