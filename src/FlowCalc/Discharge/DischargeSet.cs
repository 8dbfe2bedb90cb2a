using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>The cases of a layout's discharge, ready to be followed.</summary>
internal sealed class DischargeSet
{
    readonly Layout layout;
    readonly Bottle bottle;
    readonly CaseList list;
    readonly Requirement? requirement;
    readonly BottlePlace[] places;
    readonly Func<Temperature, Attitude, BottlePlace, DischargeCase> answer;

    DischargeSet(Layout layout, Bottle bottle, DischargeDepth depth, CancellationToken cancellation)
    {
        (this.layout, this.bottle, list) = (layout, bottle, CaseList.Of(layout));
        requirement = ApplicationRequirement.For(layout);
        places = [.. list.Attitudes.Select(attitude => BottlePlace.Of(bottle, attitude.Gravity))];
        answer = Answering(layout, bottle, requirement, depth, cancellation);
    }

    /// <summary>What follows a case of a layout.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="bottle">Its bottle.</param>
    /// <param name="requirement">What the discharge has to do; null for nothing.</param>
    /// <param name="depth">How far a case is to be followed.</param>
    /// <param name="cancellation">Asked throughout.</param>
    public static Func<Temperature, Attitude, BottlePlace, DischargeCase> Answering(Layout layout, Bottle bottle, Requirement? requirement, DischargeDepth depth, CancellationToken cancellation)
    {
        var line = CompiledLine.Of(layout, bottle);
        return layout.Agent is LiquidAgent liquid
            ? new CaseAnswer(layout, liquid, bottle, line, requirement, depth == DischargeDepth.WithoutBand ? DischargeDepth.Whole : depth, cancellation).Of
            : new ExpandingCase(layout, (ExpandingAgent)layout.Agent, bottle, line, requirement, depth, cancellation).Of;
    }

    /// <summary>How many cases there are: temperatures in order, and for each the attitudes in order.</summary>
    public int Count => list.Temperatures.Length * places.Length;

    /// <summary>The cases of a layout.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="depth">How far they are to be followed.</param>
    /// <param name="cancellation">Asked throughout.</param>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    public static DischargeSet Of(Layout layout, DischargeDepth depth, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return layout.Supply is BottleSupply { Bottle: var bottle }
            ? new(layout, bottle, depth, cancellation)
            : throw new ArgumentException("A discharge needs a bottle; a supply held at a pressure has no end.", nameof(layout));
    }

    /// <summary>Follows a case; several may be followed at once.</summary>
    public DischargeCase Answer(int at)
    {
        var (temperature, attitude) = (at / places.Length, at % places.Length);
        return answer(Temperature.FromKelvins(list.Temperatures[temperature]), list.Attitudes[attitude], places[attitude]);
    }

    /// <summary>The discharge of cases that were followed.</summary>
    public DischargeResult Result(ImmutableArray<DischargeCase> cases) => new(cases, requirement, layout.Requirement is not null, DischargeAssumptions.Of(layout, bottle, list, places));
}
