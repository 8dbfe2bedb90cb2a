using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Temperatures and attitudes in which a layout's discharge is asked.</summary>
/// <param name="Temperatures">Temperatures of bottle and contents, K.</param>
/// <param name="Attitudes">Attitudes.</param>
/// <param name="Assumptions">What the document left open.</param>
internal sealed record CaseList(ImmutableArray<double> Temperatures, ImmutableArray<Attitude> Attitudes, ImmutableArray<Assumption> Assumptions)
{
    const double Hottest = 333.15;
    const double Coldest = 253.15;
    const double OverFreezing = 5;

    /// <summary>Standing as drawn.</summary>
    public static readonly Attitude Upright = new("upright", new(0, 0, -1));

    static readonly ImmutableArray<Attitude> AnyWayUp =
        [Upright, new("on the roof", new(0, 0, 1)), new("on the left side", new(0, 1, 0)), new("on the right side", new(0, -1, 0))];

    /// <summary>The cases of a layout whose supply is a bottle.</summary>
    /// <param name="layout">The layout.</param>
    public static CaseList Of(Layout layout)
    {
        List<Assumption> assumptions = [];
        var stated = layout.Cases?.Temperatures ?? [];
        ImmutableArray<double> temperatures = stated.IsDefaultOrEmpty ? Defaults(layout, assumptions) : [.. stated.Select(temperature => temperature.Kelvins)];
        var attitudes = layout.Cases?.Attitudes ?? [];
        if (attitudes.IsDefaultOrEmpty) attitudes = DefaultAttitudes(layout, assumptions);
        return new(temperatures, attitudes, [.. assumptions]);
    }

    static ImmutableArray<double> Defaults(Layout layout, List<Assumption> assumptions)
    {
        var charge = ((BottleSupply)layout.Supply).Bottle.ChargeTemperature.Kelvins;
        // One's own liquid of unknown freezing point is asked at the same cold as the others.
        var cold = layout.Agent.FreezingPoint is { } freezing ? Math.Max(Coldest, freezing + OverFreezing) : Coldest;
        // No default case lies outside what the agent is answered for.
        var (hot, isShort) = layout.Agent.HighestTemperature < Hottest ? (layout.Agent.HighestTemperature, true) : (Hottest, false);
        ImmutableArray<double> temperatures = [.. new[] { charge, hot, cold }.Distinct()];
        var said = string.Join(", ", temperatures.Select(kelvins => FormattableString.Invariant($"{Temperature.FromKelvins(kelvins).DegreesCelsius:0.##} °C")));
        assumptions.Add(new("/cases/temperatures", said, isShort
            ? "the charge temperature, the highest at which the agent is answered (60 °C is usual), and -20 °C: common practice, no source"
            : "the charge temperature, 60 °C, and the higher of -20 °C and 5 K over the freezing point: common practice, no source"));
        return temperatures;
    }

    static ImmutableArray<Attitude> DefaultAttitudes(Layout layout, List<Assumption> assumptions)
    {
        // A gas comes out the same way in any of them.
        var isAny = ApplicationDefaults.Of(layout.Application).WorksAnyWayUp && layout.Agent.Kind != AgentKind.InertGas;
        ImmutableArray<Attitude> attitudes = isAny ? AnyWayUp : [Upright];
        var source = isAny
            ? "a system for competition has to work in any position (FIA Formula One technical regulations, article 14.1.9, an older edition seen second-hand)"
            : "the layout as drawn";
        assumptions.Add(new("/cases/attitudes", string.Join(", ", attitudes.Select(attitude => attitude.Name)), source));
        return attitudes;
    }
}
