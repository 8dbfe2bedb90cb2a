using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Losses that were worked out where their correlations have no data.</summary>
static class CorrelationRanges
{
    const double LeastBoreRatio = 0.4;
    const double MostRoughness = 0.05;
    const double MostReynolds = 1e8;
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
            flowCase.Pass(index);
            var run = runs[index];
            var flow = flowCase.Flow.Runs[index];
            var bore = run.Tube.Bore.Meters;
            if (!Friction(flow.Regime, flow.Reynolds, run.Tube.Roughness.Meters / bore) || !Throats(run, flow)) Add(ref found, Reason.Friction, index, run.Id);
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

    // A throat has friction of its own where its length is what counts: its own bore, the tube's roughness.
    static bool Throats(Run run, RunFlow flow)
    {
        if (flow.Regime == FlowRegime.AtRest) return true;
        var bore = run.Tube.Bore.Meters;
        foreach (var placed in run.Fittings)
        {
            if (placed.Fitting is not { LossCoefficient: null, Kv: null, Bore: { } own, Length.Meters: > 0 } || !(own.Meters < bore)) continue;
            if (run.Tube.Roughness.Meters / own.Meters > MostRoughness || flow.Reynolds * bore / own.Meters > MostReynolds) return false;
        }
        return true;
    }

    static void AddTee(ref Dictionary<Reason, (int, int, ImmutableArray<string>.Builder)>? found, Tee tee, Run run, int index, double boreRatio)
    {
        // Two bores that are equal in millimetres may differ in the last digit.
        var ratio = boreRatio * (1 - Slack);
        if (tee.FedThrough == TeePort.Branch)
        {
            if (!BullheadTee.IsInRange(ratio)) Add(ref found, Reason.WideOutlet, index, run.Id);
        }
        else if (run.Leaves == TeePort.Branch)
        {
            if (!RunFedTee.IsInRange(ratio, 0)) Add(ref found, Reason.WideBranch, index, run.Id);
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
