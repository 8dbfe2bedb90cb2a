using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>A mount, worked out in every load case.</summary>
public sealed record MountResult
{
    /// <summary>What hangs on the bolts.</summary>
    public required MountMasses Masses { get; init; }

    /// <summary>The load cases; a case of any direction comes with the six along the layout's axes before it.</summary>
    public required ImmutableArray<MountCase> Cases { get; init; }

    /// <summary>Every check in its worst case: bolts of the structure, of the adapter, straps, ends, each in the document's order.</summary>
    public required ImmutableArray<CheckResult> Checks { get; init; }

    /// <summary>Groups whose bolts stand in one line, or are one or two, and have no answer.</summary>
    public required ImmutableArray<MountPart> InLine { get; init; }

    /// <summary>What friction of straps and cradle holds along the bottle's axis; null without straps.</summary>
    public Force? Hold { get; init; }

    /// <summary>Force that the worst case asks along the bottle's axis; null without straps and end stops.</summary>
    public Force? AxialForce { get; init; }

    /// <summary>Whether friction alone would hold the bottle along its axis in every case, stops or not.</summary>
    public bool HoldsWithoutStops { get; init; }

    /// <summary>Greatest tension in each strap's leg with its pretension, in the document's order; empty without straps.</summary>
    public required ImmutableArray<Force> StrapTensions { get; init; }

    /// <summary>Ends of the bottle that neither a stop nor friction holds.</summary>
    public required ImmutableArray<MountPart> LooseEnds { get; init; }

    /// <summary>Prying over pull in the bracket's foot, dimensionless; null where no foot is given.</summary>
    public double? Prying { get; init; }

    /// <summary>Thrust of the open valve before a tube is on it, against the outlet; null where its bore is not known.</summary>
    public Force? Thrust { get; init; }

    /// <summary>What the document says too little of to be answered, in words.</summary>
    public required ImmutableArray<string> NotAnswered { get; init; }

    /// <summary>What the document left open, and what was taken.</summary>
    public required ImmutableArray<Assumption> Assumptions { get; init; }

    /// <summary>The check nearest to or furthest over what is borne; null where nothing could be checked.</summary>
    public CheckResult? Governing => MountSums.Governing(Checks);
}
