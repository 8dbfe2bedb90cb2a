using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>Explains a steady flow: which equations gave it, with the numbers in place.</summary>
public static class FlowExplainer
{
    const string Properties = "Density, viscosity, vapour pressure and equations of state: they are values here; GET /v1/agents/{id} has them by temperature, with their sources.";
    const string Search = "The search for the flows: what is shown holds at the flows found, and each line of it may be held against its equation.";
    const string Models = "The band of an agent that boils: the same equations with the other models of boiling in the nozzles.";
    const string PathTable = "The agent's way through tubes at constant enthalpy: Ψ and W are integrals of the states in the table, read from a finer one.";

    /// <summary>The explanation of a flow that has converged.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow, as <see cref="SteadyFlow.Solve"/> gave it.</param>
    /// <param name="cancellationToken">Asked at every run.</param>
    /// <exception cref="ArgumentException">The flow has not converged.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static FlowExplanation Of(Layout layout, FlowResult flow, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(flow);
        var log = new StepLog();
        BottleSteps.Add(log, layout, layout.Temperature.Kelvins);
        if (flow.Liquid is { } liquid)
        {
            LiquidSteps.Add(log, layout, liquid, cancellationToken);
            return new(Sorted(log), log.Take(), [], [Properties, Search]);
        }
        if (flow.Expanding is not { } expanding) throw new ArgumentException("A flow that has not converged has no explanation.", nameof(flow));
        var steps = new ExpandingSteps(log, layout, expanding);
        steps.Add(cancellationToken);
        return new(Sorted(log), log.Take(), [.. steps.Table()], [Properties, Search, PathTable, Models]);
    }

    /// <summary>The equations used, in the order of the sheet.</summary>
    /// <param name="log">The steps.</param>
    internal static ImmutableArray<Equation> Sorted(StepLog log) => [.. EquationSheet.All.Where(log.Used.Contains)];
}
