using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>What the mount of a bottle bears, and what there is to say about it.</summary>
/// <param name="Verdict">The worst severity of the findings; <c>pass</c> where there are none.</param>
/// <param name="Findings">What the engine noticed, worst first.</param>
/// <param name="Masses">What hangs on the bolts.</param>
/// <param name="Governing">The check nearest to or furthest over what is borne, of all cases; null where nothing could be checked.</param>
/// <param name="LoadCases">The load cases; one of any direction comes after the six along the layout's axes.</param>
/// <param name="Checks">Every check in its worst case: bolts of the structure, of the adapter, straps, ends.</param>
/// <param name="Straps">Greatest tension in each strap's leg, in the document's order; empty without straps.</param>
/// <param name="Slip">How the bottle is held along its axis; null without straps and end stops.</param>
/// <param name="Prying">What prying adds to the pull of a bolt in the bracket's foot, as a part of it; null where no foot is given.</param>
/// <param name="Thrust">Thrust of the open valve before a tube is on it; null where the dip tube's bore is not known.</param>
/// <param name="NotAnswered">What the document says too little of, or no such sum can tell.</param>
/// <param name="Assumptions">What the document left open, and what was taken.</param>
/// <param name="Limits">The limits that the findings were held against.</param>
/// <param name="Cautions">What to keep in mind before relying on the answer.</param>
/// <param name="Engine">What gave the answer.</param>
public sealed record MountAnswer(
    [property: AllowedValues("pass", "note", "warn", "fail")] string Verdict,
    ImmutableArray<FindingAnswer> Findings,
    MountMassesAnswer Masses,
    MountCheckAnswer? Governing,
    ImmutableArray<LoadCaseAnswer> LoadCases,
    ImmutableArray<MountCheckAnswer> Checks,
    ImmutableArray<StrapAnswer> Straps,
    SlipAnswer? Slip,
    double? Prying,
    Quantity? Thrust,
    ImmutableArray<string> NotAnswered,
    ImmutableArray<Assumption> Assumptions,
    ImmutableArray<LimitAnswer> Limits,
    ImmutableArray<string> Cautions,
    EngineAnswer Engine);
