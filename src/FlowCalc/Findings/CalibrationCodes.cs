using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>The codes of findings of a test of the built system; they stand in <see cref="FindingCodes.All"/> with the others.</summary>
public static class CalibrationCodes
{
    /// <summary>The layout as built has a flow that fails.</summary>
    public const string AsBuiltFails = "as-built-fails";

    /// <summary>All of the system differs from the layout as drawn.</summary>
    public const string BuiltOtherwise = "built-otherwise";

    /// <summary>Several causes explain the readings alike.</summary>
    public const string CauseNotCertain = "cause-not-certain";

    /// <summary>One run hardly lets anything through.</summary>
    public const string LikelyBlockedRun = "likely-blocked-run";

    /// <summary>One run loses more than is drawn.</summary>
    public const string LikelyKinkedRun = "likely-kinked-run";

    /// <summary>A reading is far from what the likeliest cause gives.</summary>
    public const string ReadingOutlier = "reading-outlier";

    /// <summary>No cause that was tried explains the readings.</summary>
    public const string ReadingsDisagree = "readings-disagree";

    internal static ImmutableArray<FindingDefinition> All { get; } =
    [
        new(AsBuiltFails, "With what the readings say of the built system, findings of its steady flow fail.", [Severity.Fail], "the limits of the flow"),
        new(BuiltOtherwise, "The readings are explained best by another roughness, bore or make of nozzle throughout, or by another pressure of the test's supply.", [Severity.Note, Severity.Warn], DefaultLimits.Find(BuiltOtherwise)!.Source),
        new(CauseNotCertain, "Other causes explain the readings about as well as the likeliest, or another explains them better than the layout as drawn, but not by enough.", [Severity.Note], DefaultLimits.Find(CauseNotCertain)!.Source),
        new(LikelyBlockedRun, "The readings are explained best by one run that lets hardly anything through.", [Severity.Fail], DefaultLimits.Find(LikelyBlockedRun)!.Source),
        new(LikelyKinkedRun, "The readings are explained best by a loss in one run that is not drawn.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(LikelyKinkedRun)!.Source),
        new(ReadingOutlier, "A reading is many of its standard uncertainties from what the likeliest cause gives.", [Severity.Warn], DefaultLimits.Find(ReadingOutlier)!.Source),
        new(ReadingsDisagree, "Readings scatter about the likeliest cause more than their uncertainties allow.", [Severity.Warn], DefaultLimits.Find(ReadingsDisagree)!.Source),
    ];
}
