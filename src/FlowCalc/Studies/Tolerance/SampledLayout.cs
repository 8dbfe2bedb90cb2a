using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Makes the layout of a sample out of the design.</summary>
internal sealed class SampledLayout
{
    readonly Layout design;
    readonly ImmutableArray<SpreadVariable> variables;
    readonly bool hasRuns, hasPoints, hasBottle;

    /// <summary>A design and what varies in it.</summary>
    /// <param name="layout">The design.</param>
    /// <param name="variables">What varies.</param>
    public SampledLayout(Layout layout, ImmutableArray<SpreadVariable> variables)
    {
        this.variables = variables;
        foreach (var variable in variables)
        {
            hasRuns |= variable.Thing.Kind is SpreadKind.Bore or SpreadKind.Roughness or SpreadKind.Length;
            hasPoints |= variable.Thing.Kind == SpreadKind.KFactor;
            hasBottle |= variable.Thing.Kind is SpreadKind.ChargePressure or SpreadKind.Fill;
        }
        // What a nozzle should get is the design's wish, however its K-factor turns out.
        var wanted = WantedShares.Of(layout);
        design = layout with
        {
            Points = [.. layout.Points.Select((point, index) => point is Nozzle nozzle ? nozzle with { Share = wanted[index] } : point)],
        };
    }

    /// <summary>The layout of a sample.</summary>
    /// <param name="values">The value of each variable, SI.</param>
    /// <param name="warmer">How much warmer it is than the design, K.</param>
    public Layout Of(ReadOnlySpan<double> values, out double warmer)
    {
        warmer = 0;
        var runs = hasRuns ? design.Runs.AsSpan().ToArray() : [];
        var points = hasPoints ? design.Points.AsSpan().ToArray() : [];
        var bottle = (design.Supply as BottleSupply)?.Bottle;
        for (var i = 0; i < values.Length; i++)
        {
            var (thing, value) = (variables[i].Thing, values[i]);
            switch (thing.Kind)
            {
                case SpreadKind.ChargePressure:
                    bottle = bottle! with { ChargePressure = Pressure.FromPascals(value) };
                    break;
                case SpreadKind.Fill:
                    bottle = bottle! with { Fill = Mass.FromKilograms(value) };
                    break;
                case SpreadKind.Temperature:
                    warmer = value - thing.Design;
                    break;
                case SpreadKind.KFactor:
                    points[thing.Items[0]] = (Nozzle)points[thing.Items[0]] with { KFactor = value, Orifice = null };
                    break;
                default:
                    foreach (var index in thing.Items) runs[index] = Changed(runs[index], thing.Kind, Length.FromMeters(value));
                    break;
            }
        }
        // The mass of a gas is what its pressure says.
        if (hasBottle && design.Agent is ExpandingAgent { Kind: AgentKind.InertGas } gas)
            bottle = bottle! with { Fill = Mass.FromKilograms(gas.Fluid.GasDensity(bottle.ChargeTemperature.Kelvins, bottle.ChargePressure.Pascals) * bottle.Volume.CubicMeters) };
        return design with
        {
            Runs = hasRuns ? ImmutableCollectionsMarshal.AsImmutableArray(runs) : design.Runs,
            Points = hasPoints ? ImmutableCollectionsMarshal.AsImmutableArray(points) : design.Points,
            Supply = hasBottle ? new BottleSupply(bottle!) : design.Supply,
            Temperature = warmer == 0 ? design.Temperature : Temperature.FromKelvins(design.Temperature.Kelvins + warmer),
        };
    }

    static Run Changed(Run run, SpreadKind kind, Length value) => kind switch
    {
        SpreadKind.Length => run with { Length = value },
        SpreadKind.Bore => run with { Tube = run.Tube with { Bore = value } },
        _ => run with { Tube = run.Tube with { Roughness = value } },
    };
}
