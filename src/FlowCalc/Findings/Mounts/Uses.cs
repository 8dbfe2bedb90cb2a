using FlowCalc.Mounts;

namespace FlowCalc.Findings.Mounts;

/// <summary>Whatever is used too far in a load case: one finding a code and part, which names every bolt or strap concerned.</summary>
static class Uses
{
    public static void Find(JudgedMount judged, FindingList findings)
    {
        foreach (var alike in judged.Result.Checks.GroupBy(check => (Code: CodeOf(check.Kind), Item: ItemOf(check))))
        {
            var limit = judged.Limit(alike.Key.Code);
            var graded = alike.Select(check => (Check: check, Grade: Grading.Of(limit, check.Use))).Where(one => one.Grade.Severity != Severity.Pass).ToList();
            if (graded.Count == 0) continue;
            var worst = graded.MaxBy(one => one.Check.Use);
            var where = graded.Where(one => one.Grade.Severity == worst.Grade.Severity).Select(one => PartNames.Of(one.Check.Part, one.Check.Number)).Distinct().Take(FindingList.MostIds);
            findings.Add(
                new Finding(alike.Key.Code, worst.Grade.Severity, [.. where], Sentence(judged, worst.Check, worst.Grade.Step), new(worst.Check.Use, null), new(worst.Grade.Step, null), limit.Source, null,
                    judged.Result.Cases[worst.Check.Case].Name),
                alike.Key.Item, worst.Check.Case);
        }
        foreach (var part in judged.Result.LooseEnds)
            findings.Add(
                new Finding(MountCodes.NoEndStop, Severity.Fail, [PartNames.Of(part, 0)],
                    $"Towards its {PartNames.Of(part, 0)} nothing holds the bottle along its axis: there is no stop, and {(judged.Mount.Straps is { IsEmpty: false } ? "no strap has a pretension that would give friction" : "no strap")}.",
                    null, null, "statics", null),
                JudgedMount.Item(part));
        foreach (var part in judged.Result.InLine)
            findings.Add(
                new Finding(MountCodes.BoltsInLine, Severity.Fail, [.. Ids(judged, part)],
                    $"The {JudgedMount.Name(part, judged.Groups.First(group => group.Part == part).Bolts)} stand in one line, or are one or two: they cannot take every moment, and have no answer.", null, null, "statics", null),
                JudgedMount.Item(part));
    }

    /// <summary>The code of a kind of check.</summary>
    public static string CodeOf(MountCheckKind kind) => kind switch
    {
        MountCheckKind.BoltStrength => MountCodes.BoltOverloaded,
        MountCheckKind.BoltProof or MountCheckKind.BoltBending => MountCodes.BoltOverProof,
        MountCheckKind.JointOpening => MountCodes.JointOpens,
        MountCheckKind.PullThrough => MountCodes.HeadPullsThrough,
        MountCheckKind.Bearing => MountCodes.HoleBears,
        MountCheckKind.ThreadStripping => MountCodes.ThreadStrips,
        MountCheckKind.FootBending or MountCheckKind.PanelBending or MountCheckKind.AdapterBending => MountCodes.PlateBends,
        MountCheckKind.StrapTension => MountCodes.StrapOverloaded,
        MountCheckKind.Slip => MountCodes.NoEndStop,
        MountCheckKind.EndStop => MountCodes.EndStopOverloaded,
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "A kind without a code."),
    };

    /// <summary>Place of a check among the findings of its code: foot, sheet and adapter plate are three plates over the same bolts.</summary>
    public static int ItemOf(CheckResult check) => JudgedMount.Item(check.Part) + check.Kind switch
    {
        MountCheckKind.FootBending => 10,
        MountCheckKind.PanelBending => 20,
        MountCheckKind.AdapterBending => 30,
        _ => 0,
    };

    static IEnumerable<string> Ids(JudgedMount judged, MountPart part) =>
        Enumerable.Range(0, judged.Groups.First(group => group.Part == part).Bolts.At.Length).Take(FindingList.MostIds).Select(number => PartNames.Of(part, number));

    static string Sentence(JudgedMount judged, CheckResult check, double step)
    {
        var (id, at) = (PartNames.Of(check.Part, check.Number), judged.Result.Cases[check.Case]);
        var loads = check is { Load: { } load, Bears: { } bears } ? $": {judged.Text(load)} where {judged.Text(bears)} are borne" : "";
        var use = Wording.Percent(check.Use, step);
        var bolts = judged.Groups.FirstOrDefault(group => group.Part == check.Part).Bolts;
        var subject = check.Kind switch
        {
            MountCheckKind.BoltStrength => $"{Capital(id)} ({bolts.Size.Id} {bolts.Class?.Id ?? "of no class"}) is used to {use} by shear and pull together",
            MountCheckKind.BoltProof => $"{Capital(id)} ({bolts.Size.Id} {bolts.Class?.Id ?? "of no class"}) is pulled to {use} of its proof load",
            MountCheckKind.BoltBending => $"{Capital(id)} is stressed to {use} of its proof stress by its pull, its shear and the bending that a spacer of {judged.Text(judged.Mount.Spacers!.Value)} lets in",
            MountCheckKind.JointOpening => $"{Capital(id)} is pulled to {use} of its preload and opens the joint",
            MountCheckKind.PullThrough => $"The {(check.Part == MountPart.Adapter ? "adapter plate" : "sheet")} at {id} is used to {use} by the pull on its head, nut or spreader",
            MountCheckKind.Bearing => $"The edge of the hole of {id} is used to {use} by its shear",
            MountCheckKind.ThreadStripping => $"The tapped thread of {id} is used to {use}",
            MountCheckKind.FootBending => $"The bracket's foot at {id} is bent to {use} of its yield stress",
            MountCheckKind.PanelBending => $"The structure's sheet at {id} is bent to {use} of its yield stress",
            MountCheckKind.AdapterBending => $"The adapter plate at {id} is bent to {use} of its yield stress",
            MountCheckKind.StrapTension => $"{Capital(id)} is stretched to {use} of its yield stress, its pretension with it",
            MountCheckKind.Slip => $"Towards the {id} of the bottle there is no stop, and friction is used to {use}",
            _ => $"The stop at the {id} is used to {use}",
        };
        return $"{subject} in {Wording.Id(at.Name)}, limit {Wording.Percent(step)}{loads}.";
    }

    static string Capital(string id) => char.ToUpperInvariant(id[0]) + id[1..];
}
