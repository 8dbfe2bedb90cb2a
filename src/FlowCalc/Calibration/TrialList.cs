using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Calibration;

/// <summary>The causes that are tried of a test, and those that cannot be.</summary>
static class TrialList
{
    const double WidestBore = 1.3, NarrowestBore = 0.7, SomeWall = 0.999;

    // A run that carries less than this part of the whole flow is at rest: nothing in it could be lost.
    const double Rest = 1e-9;

    /// <summary>The trials but the layout as drawn, in the order of <see cref="CauseKind"/> and of the runs.</summary>
    public static List<CauseTrial> Of(Measured measured, ITestRig rig, List<CauseLeftOut> leftOut)
    {
        var trials = new List<CauseTrial>();
        bool IsAsked(CauseKind kind) => measured.Suspects.IsEmpty || measured.Suspects.Contains(kind);
        var layout = rig.Tested;
        if (IsAsked(CauseKind.SupplyPressure))
            trials.Add(new(CauseKind.SupplyPressure, -1, [Unknown.Factor(UnknownKind.PressureFactor)], sizes => rig.Read(layout, sizes[0])));
        if (IsAsked(CauseKind.Roughness))
            trials.Add(new(CauseKind.Roughness, -1, [Unknown.RoughnessTo(GreatestRoughness(layout))], sizes => rig.Read(BuiltLayout.WithRoughness(layout, sizes[0]), 1)));
        if (IsAsked(CauseKind.Bore)) AddBore(rig, trials, leftOut);
        if (IsAsked(CauseKind.Nozzles)) AddNozzles(measured, rig, trials, leftOut);
        if (IsAsked(CauseKind.Run)) AddRuns(rig, trials, leftOut);
        return trials;
    }

    static void AddBore(ITestRig rig, List<CauseTrial> trials, List<CauseLeftOut> leftOut)
    {
        var (least, most) = (LeastBore(rig.Tested), MostBore(rig.Tested));
        if (least < most) trials.Add(new(CauseKind.Bore, -1, [Unknown.Factor(UnknownKind.BoreFactor, null, least, most)], sizes => rig.Read(BuiltLayout.WithBores(rig.Tested, sizes[0]), 1)));
        else leftOut.Add(new(CauseKind.Bore, -1, "Roughness and bends leave no other bore that a document may state."));
    }

    static void AddNozzles(Measured measured, ITestRig rig, List<CauseTrial> trials, List<CauseLeftOut> leftOut)
    {
        var groups = NozzleGroup.Of(rig.Tested.Points);
        if (groups.Length > measured.Readings.Length)
            leftOut.Add(new(CauseKind.Nozzles, -1, $"There are more types of nozzle, {groups.Length}, than readings, {measured.Readings.Length}."));
        else
            trials.Add(new(CauseKind.Nozzles, -1, [.. groups.Select(group => Unknown.Factor(UnknownKind.NozzleFactor, group))], sizes => rig is HeldRig held ? held.WithNozzles(groups, sizes) : rig.Read(BuiltLayout.WithNozzles(rig.Tested, groups, sizes), 1)));
    }

    static void AddRuns(ITestRig rig, List<CauseTrial> trials, List<CauseLeftOut> leftOut)
    {
        if (rig is not HeldRig held)
        {
            leftOut.Add(new(CauseKind.Run, -1, "A time alone does not tell one run from another."));
            return;
        }
        var flows = held.DrawnFlows();
        var greatest = flows.Max();
        for (var at = 0; at < flows.Length; at++)
        {
            var run = at;
            if (flows[run] <= Rest * greatest)
            {
                leftOut.Add(new(CauseKind.Run, run, "Nothing flows in it as drawn."));
                continue;
            }
            var read = new Lazy<Func<double, (double[] Readings, double Flow)>>(() => held.WithLossIn(run));
            trials.Add(new(CauseKind.Run, run, [Unknown.Loss(held.WholeLoss(run, flows[run]), Sizes.LossCoefficient.Most - rig.Tested.Runs[run].LossCoefficient)], sizes => read.Value(sizes[0]).Readings, size => size == 0 ? 0 : 1 - read.Value(size).Flow / flows[run]));
        }
    }

    static double GreatestRoughness(Layout layout) => TubeRoughness.MostOfBore * layout.Runs.Min(run => Narrowest(run));

    // As narrow as the roughness lets a document say.
    static double LeastBore(Layout layout) => Math.Max(NarrowestBore, layout.Runs.Max(run => run.Tube.Roughness.Meters / (TubeRoughness.MostOfBore * run.Tube.Bore.Meters)));

    // Some wall is left of every tube whose outside is known, no bend is tighter than half its bore, and no bore wider than a document may state.
    static double MostBore(Layout layout) => layout.Runs.Min(run =>
    {
        var bore = run.Tube.Bore.Meters;
        var most = Math.Min(WidestBore, SomeWall * (run.Tube.OutsideDiameter?.Meters ?? double.PositiveInfinity) / bore);
        return run.Bends.Aggregate(Math.Min(most, Sizes.Bore.Most / bore), (least, bend) => Math.Min(least, 2 * bend.Radius.Meters / bore));
    });

    static double Narrowest(Run run) => run.Fittings.Select(placed => placed.Fitting.Bore?.Meters ?? double.PositiveInfinity).Append(run.Tube.Bore.Meters).Min();
}
