using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Api.Answers;

/// <summary>The limits of an answer; those of a document that states none are the same lists every time.</summary>
internal static class LimitAnswers
{
    static readonly ImmutableArray<Limit>[] Defaults =
        [.. ((LimitUse[])[LimitUse.Flow, LimitUse.Discharge, LimitUse.CutList, LimitUse.Mount, LimitUse.Circuit, LimitUse.Upkeep, LimitUse.Coverage, LimitUse.Calibration]).Select(use => DefaultLimits.For([], use))];
    static readonly ImmutableArray<LimitAnswer>[][] DefaultsBySystem =
        [.. Defaults.Select(limits => Enum.GetValues<Quantities.UnitSystem>().Select(system => Written(limits, UnitWriter.Of(system))).ToArray())];

    /// <summary>The limits as an answer has them.</summary>
    public static ImmutableArray<LimitAnswer> Of(ImmutableArray<Limit> limits, UnitWriter write)
    {
        var known = Array.IndexOf(Defaults, limits);
        return known < 0 ? Written(limits, write) : DefaultsBySystem[known][(int)write.System];
    }

    /// <summary>Whether these are one of the lists that live as long as the service.</summary>
    public static bool AreDefault(ImmutableArray<LimitAnswer> limits) => Array.Exists(DefaultsBySystem, lists => Array.IndexOf(lists, limits) >= 0);

    static ImmutableArray<LimitAnswer> Written(ImmutableArray<Limit> limits, UnitWriter write) => [.. limits.Select(limit => LimitAnswer.Of(limit, write))];
}
