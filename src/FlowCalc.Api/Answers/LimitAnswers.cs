using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Api.Answers;

/// <summary>The limits of an answer; those of a document that states none are the same lists every time.</summary>
internal static class LimitAnswers
{
    static readonly ImmutableArray<Limit> Default = DefaultLimits.For([]);
    static readonly ImmutableArray<LimitAnswer>[] DefaultBySystem =
        [.. Enum.GetValues<Quantities.UnitSystem>().Select(system => Written(Default, UnitWriter.Of(system)))];

    /// <summary>The limits as an answer has them.</summary>
    public static ImmutableArray<LimitAnswer> Of(ImmutableArray<Limit> limits, UnitWriter write) =>
        limits == Default ? DefaultBySystem[(int)write.System] : Written(limits, write);

    /// <summary>Whether these are one of the lists that live as long as the service.</summary>
    public static bool AreDefault(ImmutableArray<LimitAnswer> limits) => Array.IndexOf(DefaultBySystem, limits) >= 0;

    static ImmutableArray<LimitAnswer> Written(ImmutableArray<Limit> limits, UnitWriter write) => [.. limits.Select(limit => LimitAnswer.Of(limit, write))];
}
