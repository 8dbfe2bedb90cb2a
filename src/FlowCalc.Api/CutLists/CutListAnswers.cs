using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Routes;

namespace FlowCalc.Api.CutLists;

/// <summary>Writes a cut list of the engine as an answer.</summary>
internal static class CutListAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static CutListAnswer Of(Layout layout, CutList list, CutListJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
        [.. list.Runs.Select(run => Run(layout, run, write))],
        [.. list.Tubes.Select(order => Tube(layout, order, write))],
        [.. list.Items.Select(item => new OrderItemAnswer(item.Kind, item.Name, item.Count, write.Of(item.Size), write.Of(item.Length), item.Note))],
        judgement.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.For(layout),
        Engine.Answer);

    static RunCutAnswer Run(Layout layout, RunCut cut, UnitWriter write)
    {
        var run = layout.Runs[cut.Run];
        return new(
            run.Id, layout.Points[run.From].Id, layout.Points[run.To].Id, TubeLabel.Of(run.Tube), write.Of(cut.Length), [.. cut.Pieces.Select(piece => Piece(piece, write))],
            cut.UnplacedBends, cut.UnplacedFittings, Clips(cut.Clips, write),
            [.. cut.Sleeves.Select(sleeve => new SleeveAnswer(write.Of(sleeve.From), write.Of(sleeve.To), write.Of(sleeve.Length), write.Of(sleeve.InsideDiameter)))]);
    }

    static PieceAnswer Piece(TubePiece piece, UnitWriter write) => new(
        piece.Number, write.Of(piece.Cut), write.Of(piece.Exact), write.Of(piece.Sawn), End(piece.Start, write), End(piece.End, write),
        [.. piece.Bends.Select(bend => Bend(bend, write))], [.. piece.Straights.Select(straight => write.Of(straight))]);

    static JointAnswer End(PieceEnd end, UnitWriter write) =>
        new(end.Fitting, write.Of(end.Insertion), write.Of(end.Allowance), end.IsKnown, write.Of(end.Straight));

    static BendMarkAnswer Bend(BendMark bend, UnitWriter write) => new(
        write.Of(bend.At), write.Of(bend.Angle.Radians, QuantityKind.Angle), write.Of(bend.Radius),
        bend.Rotation is { } rotation ? write.Of(rotation.Radians, QuantityKind.Angle) : null, write.Of(bend.Setback), write.Of(bend.Arc), write.Of(bend.Gain));

    static ClipsAnswer Clips(RunClips clips, UnitWriter write) =>
        new(write.Of(clips.Spacing), write.Of(clips.Table), clips.AreStated, [.. clips.At.Select(place => write.Of(place))], clips.Count, clips.Unplaced);

    static TubeOrderAnswer Tube(Layout layout, TubeOrder order, UnitWriter write) => new(
        TubeLabel.Of(order.Tube), write.Of(order.Tube.OutsideDiameter), write.Of(order.Tube.Bore), order.Tube.Material, order.Pieces.Length, write.Of(order.Finished),
        write.Of(order.Order), order.Mass is { } mass ? write.Of(mass) : null, write.Of(order.Filled.CubicMeters, QuantityKind.Volume),
        order.Stock is { } plan ? Stock(layout, order, plan, write) : null);

    static StockAnswer Stock(Layout layout, TubeOrder order, StockPlan plan, UnitWriter write)
    {
        PieceNameAnswer Named(int place) => new(layout.Runs[order.Pieces[place].Run].Id, order.Pieces[place].Number);
        return new(
            plan.IsCoil ? "coil" : "bar", [.. plan.Bars.Select(bar => new BarAnswer(write.Of(bar.Length), [.. bar.Pieces.Select(Named)], write.Of(bar.Offcut)))],
            [.. plan.TooLong.Select(Named)], write.Of(plan.Used), write.Of(plan.LeastPossible), plan.IsLeast, plan.SpareBars);
    }
}
