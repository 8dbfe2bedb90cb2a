using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>The codes of findings of a mount; they stand in <see cref="FindingCodes.All"/> with the others.</summary>
public static class MountCodes
{
    /// <summary>Long spacers bend the bolts in them.</summary>
    public const string AdapterLever = "adapter-lever";

    /// <summary>Bolts of a mount are of a class below 8.8.</summary>
    public const string BoltGradeLow = "bolt-grade-low";

    /// <summary>Bolts of a mount have no class.</summary>
    public const string BoltGradeUnknown = "bolt-grade-unknown";

    /// <summary>A bolt of a mount is pulled beyond its proof load.</summary>
    public const string BoltOverProof = "bolt-over-proof";

    /// <summary>A bolt of a mount bears too much.</summary>
    public const string BoltOverloaded = "bolt-overloaded";

    /// <summary>The bolts of a mount cannot take every moment.</summary>
    public const string BoltsInLine = "bolts-in-line";

    /// <summary>The bottle stands outside the main structure.</summary>
    public const string BottleOutsideStructure = "bottle-outside-structure";

    /// <summary>A stop at an end of the bottle bears too much.</summary>
    public const string EndStopOverloaded = "end-stop-overloaded";

    /// <summary>A bolt's head or nut goes through its sheet.</summary>
    public const string HeadPullsThrough = "head-pulls-through";

    /// <summary>The edge of a bolt's hole yields.</summary>
    public const string HoleBears = "hole-bears";

    /// <summary>A bolt is pulled beyond its preload.</summary>
    public const string JointOpens = "joint-opens";

    /// <summary>Nothing but friction holds the bottle along its axis.</summary>
    public const string NoEndStop = "no-end-stop";

    /// <summary>A plate of a mount bends.</summary>
    public const string PlateBends = "plate-bends";

    /// <summary>The bottle has too few straps.</summary>
    public const string StrapCount = "strap-count";

    /// <summary>A strap is not of metal.</summary>
    public const string StrapNotMetal = "strap-not-metal";

    /// <summary>A strap of the bottle bears too much.</summary>
    public const string StrapOverloaded = "strap-overloaded";

    /// <summary>A thin sheet has no spreader under its bolts.</summary>
    public const string ThinPanel = "thin-panel";

    /// <summary>The thread of a tapped hole strips.</summary>
    public const string ThreadStrips = "thread-strips";

    /// <summary>A bolt goes too short a way into its thread.</summary>
    public const string ThreadTooShort = "thread-too-short";

    /// <summary>Whose rule it is where a bottle stands.</summary>
    internal const string OutsideStructure = "national rules of motorsport want it inside, seen second-hand for hand-held bottles; another class may ask for something else";

    /// <summary>All codes of a mount, in ordinal order.</summary>
    public static ImmutableArray<FindingDefinition> All { get; } =
    [
        new(AdapterLever, "The spacers under a mount are long against the diameter of the bolts in them, which they bend.", [Severity.Note, Severity.Fail], DefaultLimits.Find(AdapterLever)!.Source),
        new(BoltGradeLow, "Bolts of a mount are of a class weaker than 8.8.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(BoltGradeUnknown, "The class of a mount's bolts is not given; the weakest is taken.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(BoltOverProof, "In a load case a bolt's pull, prying with it, is over its proof load, or where a spacer bends it, its stress over its proof stress.", [Severity.Fail], DefaultLimits.Find(BoltOverProof)!.Source),
        new(BoltOverloaded, "In a load case a bolt's shear and pull together are near or over what it bears.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(BoltOverloaded)!.Source),
        new(BoltsInLine, "The bolts of a group stand in one line, or are one or two, and cannot take the moment along it.", [Severity.Fail], "statics"),
        new(BottleOutsideStructure, "The document says that the bottle stands outside the main structure.", [Severity.Warn], OutsideStructure),
        new(EndStopOverloaded, "In a load case the bottle presses on a stop with more than it bears.", [Severity.Fail], DefaultLimits.Find(EndStopOverloaded)!.Source),
        new(HeadPullsThrough, "In a load case a bolt's pull, prying with it, is over that at which its head, nut or washer punches through the sheet.", [Severity.Fail], DefaultLimits.Find(HeadPullsThrough)!.Source),
        new(HoleBears, "In a load case a bolt's shear is over that at which the edge of its hole yields.", [Severity.Fail], DefaultLimits.Find(HoleBears)!.Source),
        new(JointOpens, "In a load case a bolt's pull is over its preload, so that the joint opens and works loose.", [Severity.Note], DefaultLimits.Find(JointOpens)!.Source),
        new(NoEndStop, "Towards an end of the bottle there is no stop, and friction of straps and cradle holds hardly or not enough, or there is none.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(NoEndStop)!.Source),
        new(PlateBends, "In a load case the bending stress in the bracket's foot, the structure's sheet or the adapter plate is near or over yield.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(PlateBends)!.Source),
        new(StrapCount, "The bottle has fewer straps than rules ask for.", [Severity.Warn], DefaultLimits.Find(StrapCount)!.Source),
        new(StrapNotMetal, "A strap of the bottle is not of metal.", [Severity.Warn], DefaultLimits.Find(StrapCount)!.Source),
        new(StrapOverloaded, "In a load case the tension in a strap, pretension with it, is near or over that at which it yields.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(StrapOverloaded)!.Source),
        new(ThinPanel, "Bolts go through a thin sheet without a spreader of 3 mm or more.", [Severity.Warn], DefaultLimits.Find(ThinPanel)!.Source),
        new(ThreadStrips, "In a load case a bolt's pull, prying with it, is over that at which the thread of its tapped hole strips.", [Severity.Fail], DefaultLimits.Find(ThreadStrips)!.Source),
        new(ThreadTooShort, "A bolt goes less far into a tapped hole than is usual for its material.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(ThreadTooShort)!.Source),
    ];
}
