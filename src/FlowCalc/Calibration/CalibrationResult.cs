using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>What the readings of a test say of the system that was built. Where <see cref="Failure"/> says why there is no answer, the lists are empty.</summary>
public sealed record CalibrationResult
{
    /// <summary>Why there is no answer; null where there is one.</summary>
    public string? Failure { get; init; }

    /// <summary>Every cause that was tried, least score first; causes of one score by kind, then by run.</summary>
    public ImmutableArray<CauseFit> Causes { get; init; } = [];

    /// <summary>The layout as drawn; null without an answer.</summary>
    public CauseFit? Drawn { get; init; }

    /// <summary>The likeliest cause: the layout as drawn, unless another has a score less than its by more than <see cref="CauseScore.Strong"/>; null without an answer.</summary>
    public CauseFit? Best { get; init; }

    /// <summary>Other causes that the readings do not tell from the best, by score.</summary>
    public ImmutableArray<CauseFit> Alike { get; init; } = [];

    /// <summary>Causes without an answer.</summary>
    public ImmutableArray<CauseLeftOut> LeftOut { get; init; } = [];

    /// <summary>The layout as the best cause says that it was built, with its own agent and supply; null without an answer.</summary>
    public Layout? Built { get; init; }

    /// <summary>Flow of the layout as drawn, with its own agent and supply; null without an answer.</summary>
    public FlowResult? DrawnFlow { get; init; }

    /// <summary>Flow of the layout as built, with its own agent and supply; null without an answer.</summary>
    public FlowResult? BuiltFlow { get; init; }
}
