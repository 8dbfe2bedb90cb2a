using System.Collections.Immutable;
using FlowCalc.Findings.Cures;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using UnitsNet;

namespace FlowCalc.Studies.Sizing;

/// <summary>Works out what the stock can be in each group: its own choice first, then the stock in its order, without what cannot be built.</summary>
internal sealed class ModelBuilder
{
    readonly SizingProblem problem;
    readonly Pressure? reservoir;
    readonly List<string> leftOut = [];
    readonly int[] runGroup, nozzleGroup;
    readonly Run[][] runs;
    readonly Nozzle[][] nozzles;
    readonly double[][] runSum, nozzleSum;
    readonly double?[][] perMetre;

    ModelBuilder(SizingProblem problem, Pressure? reservoir)
    {
        (this.problem, this.reservoir) = (problem, reservoir);
        var layout = problem.Layout;
        runs = [.. layout.Runs.Select(run => new[] { run })];
        nozzles = [.. layout.Points.Select(point => point is Nozzle nozzle ? new[] { nozzle } : [])];
        (runSum, nozzleSum) = (new double[runs.Length][], new double[nozzles.Length][]);
        perMetre = [.. runs.Select(_ => Array.Empty<double?>())];
        (runGroup, nozzleGroup) = (new int[runs.Length], new int[nozzles.Length]);
        Array.Fill(runGroup, -1);
        Array.Fill(nozzleGroup, -1);
    }

    /// <summary>The model of a problem.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="reservoir">Absolute pressure that stands in the tubes while every outlet is shut; null where it is not known.</param>
    public static SizingModel Of(SizingProblem problem, Pressure? reservoir)
    {
        var builder = new ModelBuilder(problem, reservoir);
        var groups = problem.Groups.Length;
        int[] count = new int[groups], present = new int[groups];
        for (var group = 0; group < groups; group++)
            (count[group], present[group]) = problem.Groups[group].Runs.IsEmpty ? builder.FreeNozzles(group) : builder.FreeRuns(group);
        return new()
        {
            Layout = problem.Layout,
            Wish = problem.Wish,
            Objective = problem.Objective,
            Count = count,
            Present = present,
            RunGroup = builder.runGroup,
            NozzleGroup = builder.nozzleGroup,
            Runs = builder.runs,
            Nozzles = builder.nozzles,
            RunSum = builder.runSum,
            PerMetre = builder.perMetre,
            NozzleSum = builder.nozzleSum,
            Wanted = SizingModel.WantedOf(problem.Layout),
            LeftOut = [.. builder.leftOut.Distinct()],
        };
    }

    (int Count, int Present) FreeRuns(int group)
    {
        var members = problem.Groups[group].Runs;
        var own = problem.Layout.Runs[members[0]].Tube;
        var isOne = members.All(run => SameSize.Of(problem.Layout.Runs[run].Tube, own));
        var options = problem.Tubes.ToList();
        var at = options.FindIndex(option => SameSize.Of(option.Tube, own));
        // What is there may stay, as long as the objective can count it.
        if (isOne && at < 0 && Price(new(own, null, TubeMass.PerMetre(own))) is not null)
        {
            options.Insert(0, new(own, null, TubeMass.PerMetre(own)));
            at = 0;
        }
        var variants = members.Select(run => options.Select(option => In(problem.Layout.Runs[run], option.Tube)).ToArray()).ToArray();
        // The group keeps one choice for all of it: what one of its runs cannot have none can.
        var kept = Enumerable.Range(0, options.Count).Where(option => variants.All(of => of[option] is not null)).ToArray();
        if (kept.Length == 0) return Stuck(members);
        double?[] prices = [.. kept.Select(option => Price(options[option]))];
        for (var member = 0; member < members.Length; member++)
        {
            var run = members[member];
            runGroup[run] = group;
            runs[run] = [.. kept.Select(option => variants[member][option]!)];
            perMetre[run] = prices;
            runSum[run] = [.. runs[run].Select((changed, choice) => Sum(prices[choice], changed, !SameSize.Of(changed.Tube, problem.Layout.Runs[run].Tube)))];
        }
        return (kept.Length, isOne ? Array.IndexOf(kept, at) : -1);
    }

    // A group of which nothing of the stock can be built stays as it is, one run at a time.
    (int Count, int Present) Stuck(ImmutableArray<int> members)
    {
        leftOut.Add($"{string.Join(", ", members.Select(run => problem.Layout.Runs[run].Id))}: no tube of the stock can be laid in all of it, so it stays as it is");
        foreach (var run in members) runSum[run] = [0];
        return (1, 0);
    }

    (int Count, int Present) FreeNozzles(int group)
    {
        var members = problem.Groups[group].Nozzles;
        var now = members.Select(point => (Nozzle)problem.Layout.Points[point]).ToArray();
        var isOne = now.All(nozzle => SameSize.Of(nozzle, now[0]));
        var variants = now.Select(nozzle => problem.Nozzles.Select(option => On(option, nozzle)).ToList()).ToArray();
        var at = isOne ? variants[0].FindIndex(nozzle => nozzle is not null && SameSize.Of(nozzle, now[0])) : -1;
        if (isOne && at < 0)
        {
            for (var member = 0; member < now.Length; member++) variants[member].Insert(0, now[member]);
            at = 0;
        }
        var kept = Enumerable.Range(0, variants[0].Count).Where(option => variants.All(of => of[option] is not null)).ToArray();
        for (var member = 0; member < members.Length; member++)
        {
            var point = members[member];
            nozzleGroup[point] = group;
            nozzles[point] = [.. kept.Select(option => variants[member][option]!)];
            var isCounted = problem.Objective == SizingObjective.FewestChanges;
            nozzleSum[point] = [.. nozzles[point].Select(nozzle => isCounted && !SameSize.Of(nozzle, now[member]) ? 1.0 : 0)];
        }
        return (kept.Length, isOne ? Array.IndexOf(kept, at) : -1);
    }

    Nozzle? On(NozzleOption option, Nozzle nozzle)
    {
        var changed = option.On(nozzle);
        if (changed is null) leftOut.Add(FormattableString.Invariant($"an orifice of {option.Diameter!.Value.Millimeters:0.######} mm in {nozzle.Id}: neither the stock nor the nozzle says its discharge coefficient"));
        return changed;
    }

    double? Price(TubeOption option) => problem.Objective switch
    {
        SizingObjective.LeastCost => option.CostPerMetre,
        SizingObjective.LeastMass => option.MassPerMetre,
        _ => null,
    };

    double Sum(double? price, Run run, bool isChanged) =>
        problem.Objective == SizingObjective.FewestChanges ? (isChanged ? 1 : 0) : (price ?? 0) * run.Length.Meters;

    // Null where the run cannot be laid in the tube, or not without a doubt.
    Run? In(Run run, Tube tube)
    {
        if (SameSize.Of(run.Tube, tube)) return run;
        if (Rebending.Relaid(problem.Layout, run, tube) is not { } changed) return Out(run, tube, "its bends cannot be laid in it");
        if (!Rebending.Fits(changed)) return Out(run, tube, "its bends would no longer fit its route");
        if (changed.Bends.Length > 0 && tube.MinimumBendRadius is { } least && changed.Bends.Min(bend => bend.Radius.Meters) < least.Meters * (1 - 1e-9))
            return Out(run, tube, "its bends are tighter than the tube allows");
        if (run.Fittings.Any(placed => TubeRoughness.IsTooMuchFor(placed.Fitting, tube))) return Out(run, tube, "its roughness is too much for a fitting of the run");
        return tube.WorkingPressure is { } marked && reservoir is { } standing && marked < standing
            ? Out(run, tube, "it is marked for less than the pressure of the supply")
            : changed;
    }

    Run? Out(Run run, Tube tube, string why)
    {
        leftOut.Add($"{tube.Name ?? "the tube"} in {run.Id}: {why}");
        return null;
    }
}
