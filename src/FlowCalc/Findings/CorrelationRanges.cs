using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Losses that were worked out where their correlations have no data.</summary>
static class CorrelationRanges
{
    const double LeastBoreRatio = 0.4;
    const double LeastValveReynolds = 1e4;

    // A right angle or a ratio of 1.5 that was worked out from places or millimetres may be off by a last digit.
    const double Slack = 1e-9;

    const string Tees = "D. C. Rennels and H. M. Hudson, Pipe Flow, 2012 (from memory)";
    const string Valves = "IEC 60534-2-1 (from memory)";

    public static void Find(FlowCase flowCase, FindingList findings)
    {
        Dictionary<Reason, (int Count, int First, ImmutableArray<string>.Builder Ids)>? found = null;
        var runs = flowCase.Layout.Runs;
        for (var index = 0; index < runs.Length; index++)
        {
            var run = runs[index];
            var flow = flowCase.Flow.Runs[index];
            var bore = run.Tube.Bore.Meters;
            if (!Friction(flow.Regime, flow.Reynolds, run.Tube.Roughness.Meters / bore)) Add(ref found, Reason.Friction, index, run.Id);
            foreach (var bend in run.Bends)
            {
                if (SmoothBend.IsInRange(bend.Angle.Radians - Slack, bend.Radius.Meters / bore + Slack)) continue;
                Add(ref found, Reason.Bend, index, run.Id);
                break;
            }
            foreach (var placed in run.Fittings)
            {
                if (placed.Fitting.Kv is null || !(flow.Reynolds is > 0 and < LeastValveReynolds)) continue;
                Add(ref found, Reason.Valve, index, run.Id);
                break;
            }
            if (flowCase.Layout.Points[run.From] is Tee tee && flowCase.FeedRun[run.From] is >= 0 and var feed)
                AddTee(ref found, tee, run, index, bore / runs[feed].Tube.Bore.Meters);
        }
        if (flowCase.Layout.Supply is BottleSupply { Bottle.Outlet.ValveKv: not null }) AddOutlet(flowCase, ref found);
        if (found is null) return;
        foreach (var reason in Enum.GetValues<Reason>())
            if (found.TryGetValue(reason, out var places)) findings.Add(Describe(reason, places.Count, places.Ids.ToImmutable()), places.First);
    }

    // The transition has a code of its own, and at rest there is no loss.
    static bool Friction(FlowRegime regime, double reynolds, double roughness) =>
        regime is FlowRegime.Transition or FlowRegime.AtRest || DarcyFriction.IsInRange(reynolds, roughness);

    static void AddTee(ref Dictionary<Reason, (int, int, ImmutableArray<string>.Builder)>? found, Tee tee, Run run, int index, double boreRatio)
    {
        if (tee.FedThrough == TeePort.Branch)
        {
            if (!BullheadTee.IsInRange(boreRatio)) Add(ref found, Reason.WideOutlet, index, run.Id);
        }
        else if (run.Leaves == TeePort.Branch)
        {
            if (!RunFedTee.IsInRange(boreRatio, 0)) Add(ref found, Reason.WideBranch, index, run.Id);
            else if (boreRatio < LeastBoreRatio - Slack) Add(ref found, Reason.NarrowBranch, index, run.Id);
        }
    }

    // The valve's own bore is not known; the tube that it feeds stands for it.
    static void AddOutlet(FlowCase flowCase, ref Dictionary<Reason, (int, int, ImmutableArray<string>.Builder)>? found)
    {
        var supply = flowCase.SupplyPoint;
        var first = flowCase.Leaving(supply);
        if (first.Length > 0 && flowCase.Flow.Runs[first[0]].Reynolds is > 0 and < LeastValveReynolds) Add(ref found, Reason.Valve, -1, flowCase.PointId(supply));
    }

    static void Add(ref Dictionary<Reason, (int Count, int First, ImmutableArray<string>.Builder Ids)>? found, Reason reason, int item, string id)
    {
        found ??= [];
        var places = found.TryGetValue(reason, out var before) ? before : (Count: 0, First: item, Ids: ImmutableArray.CreateBuilder<string>());
        if (places.Count < FindingList.MostIds) places.Ids.Add(id);
        found[reason] = (places.Count + 1, places.First, places.Ids);
    }

    static Finding Describe(Reason reason, int count, ImmutableArray<string> ids)
    {
        var where = $"{Wording.Ids(ids)}{(count > ids.Length ? $" (of {Wording.Count(count, "place")})" : "")}";
        var (message, limit, source) = reason switch
        {
            Reason.Friction => ($"In {where} the Reynolds number is over 1e8 or the roughness over 5 % of the bore, where the friction equation has no data.", (double?)null, "C. F. Colebrook (1939, from memory)"),
            Reason.Bend => ($"In {where} a bend is tighter than its loss has data for: a radius under 0.5 bores, or under 1.5 bores where it turns more than 90°.", 1.5, "D. C. Rennels and H. M. Hudson, Pipe Flow, 2012; the limit of 1.5 from a comparison with H. Ito (1960) (both from memory)"),
            Reason.WideBranch => ($"In {where} the tee's branch is wider than its run: its loss is pieced together from an equal tee and an expansion.", 1, Tees),
            Reason.NarrowBranch => ($"In {where} the tee's branch is narrower than 0.4 of its run, where published tees part from one another.", LeastBoreRatio, Tees),
            Reason.WideOutlet => ($"In {where} an outlet is wider than the branch that feeds its tee, where the tee's loss has no data.", 1, "I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., diagram 7-29 (from memory)"),
            Reason.Valve => ($"In {where} the Reynolds number in the tube is under 1e4: a Kv is a figure of turbulent flow and promises too much there.", LeastValveReynolds, Valves),
            _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Not a reason."),
        };
        return new Finding(FindingCodes.OutsideCorrelation, Severity.Note, ids, message, null, limit is { } step ? new Measure(step, null) : null, source, null);
    }

    enum Reason
    {
        Friction,
        Bend,
        WideBranch,
        NarrowBranch,
        WideOutlet,
        Valve,
    }
}
