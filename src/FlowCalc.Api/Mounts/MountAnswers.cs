using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;
using Force = UnitsNet.Force;

namespace FlowCalc.Api.Mounts;

/// <summary>Writes a mount of the engine as an answer.</summary>
internal static class MountAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static MountAnswer Of(Layout layout, MountResult result, MountJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
        Masses(result.Masses, write),
        Check(result.Governing, result, write),
        [.. result.Cases.Select(one => Case(one, result, write))],
        [.. result.Checks.Select(check => Check(check, result, write)!)],
        [.. result.StrapTensions.Select((tension, strap) => new StrapAnswer(PartNames.Of(MountPart.Strap, strap), Of(tension, write)))],
        result.AxialForce is { } asked ? new(
            result.Hold is { } hold ? Of(hold, write) : null, Of(asked, write), result.HoldsWithoutStops, [.. result.LooseEnds.Select(end => PartNames.Of(end, 0))]) : null,
        UnitWriter.Plain(result.Prying),
        result.Thrust is { } thrust ? Of(thrust, write) : null,
        result.NotAnswered,
        judgement.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.For(layout),
        Engine.Answer);

    static MountMassesAnswer Masses(MountMasses masses, UnitWriter write) => new(
        write.Of(masses.Bottle), write.Of(masses.Agent), write.Of(masses.Cushion), write.Of(masses.Added), write.Of(masses.Total),
        [.. masses.Centres.Select(centre => ImmutableArray.Create(write.Of(centre.X), write.Of(centre.Y), write.Of(centre.Z)))]);

    static LoadCaseAnswer Case(MountCase one, MountResult result, UnitWriter write) => new(
        one.Name, UnitWriter.Plain(one.Acceleration), one.Direction is { } direction ? Of(direction) : null, Of(one.Force, write), one.Source,
        [.. one.Bolts.Select(bolt => new BoltLoadAnswer(PartNames.Of(bolt.Part, bolt.Number), Of(bolt.Pull, write), Of(bolt.Prying, write), Of(bolt.Shear, write)))],
        Check(one.Governing, result, write));

    static MountCheckAnswer? Check(CheckResult? check, MountResult result, UnitWriter write) => check is null ? null : new(
        Word(check.Kind), PartNames.Of(check.Part, check.Number), UnitWriter.Plain(check.Use), UnitWriter.Plain(check.Margin), check.Load is { } load ? Of(load, write) : null,
        check.Bears is { } bears ? Of(bears, write) : null, result.Cases[check.Case].Name, Of(check.Direction));

    static ImmutableArray<double> Of(Direction direction) => [UnitWriter.Plain(direction.X), UnitWriter.Plain(direction.Y), UnitWriter.Plain(direction.Z)];

    static Quantity Of(Force force, UnitWriter write) => write.Of(force.Newtons, QuantityKind.Force);

    static string Word(MountCheckKind kind) => kind switch
    {
        MountCheckKind.BoltStrength => "bolt-strength",
        MountCheckKind.BoltProof => "bolt-proof",
        MountCheckKind.BoltBending => "bolt-bending",
        MountCheckKind.JointOpening => "joint-opening",
        MountCheckKind.PullThrough => "pull-through",
        MountCheckKind.Bearing => "bearing",
        MountCheckKind.ThreadStripping => "thread-stripping",
        MountCheckKind.FootBending => "foot-bending",
        MountCheckKind.PanelBending => "panel-bending",
        MountCheckKind.AdapterBending => "adapter-bending",
        MountCheckKind.StrapTension => "strap-tension",
        MountCheckKind.Slip => "slip",
        _ => "end-stop",
    };
}
