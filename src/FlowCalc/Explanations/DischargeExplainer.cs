using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>Explains a discharge: the state at the start of each case, the flow of the filled line there, and how fast the bottle changes then.</summary>
public static class DischargeExplainer
{
    static readonly string[] LeftOut =
    [
        "The steps between start and end: thousands of small ones, each the flow of the instant and the changes a second that the last steps of a case show, integrated over time.",
        "How the line fills and how gas follows through it: the flow shown is that of the filled line at the pressure of the start, which a discharge comes near to once the line is full. The pressure has fallen a little by then.",
        "The heat from the bottle's wall: it is nothing at the start, and grows as gas and wall part in temperature; cushionExponent in the answer says what came of it.",
        "The flow of a case whose outlet draws gas over a liquid from the start.",
        "The bands: the same calculation with other choices of the model.",
        "Density, viscosity, vapour pressure and equations of state: they are values here; GET /v1/agents/{id} has them by temperature, with their sources.",
    ];

    /// <summary>How many points a discharge has to explain: those of the layout in every case.</summary>
    /// <param name="layout">A layout whose supply is a bottle.</param>
    /// <returns>Points times cases.</returns>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    public static long Points(Layout layout)
    {
        RequireBottle(layout);
        return (long)layout.Points.Length * LayoutDischarge.CasesOf(layout);
    }

    /// <summary>The explanation of a discharge.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="discharge">Its discharge, as <see cref="LayoutDischarge.Solve(Layout, CancellationToken)"/> gave it.</param>
    /// <param name="cancellationToken">Asked at every run of every case.</param>
    /// <exception cref="ArgumentException">The layout's supply is not a bottle.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static DischargeExplanation Of(Layout layout, DischargeResult discharge, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(discharge);
        var bottle = RequireBottle(layout);
        var log = new StepLog();
        var line = CompiledLine.Of(layout, bottle);
        CaseExplanation Explained(DischargeCase one)
        {
            if (one.Failure is not null) return new(one.Temperature, one.Attitude.Name, [], []);
            BottleSteps.Add(log, layout, one.Temperature.Kelvins);
            var place = BottlePlace.Of(bottle, one.Attitude.Gravity);
            PathState[] states = [];
            if (layout.Agent is LiquidAgent liquid) LiquidCaseSteps.Add(log, layout, liquid, line, place, one, cancellationToken);
            else states = ExpandingCaseSteps.Add(log, layout, (ExpandingAgent)layout.Agent, place, one, cancellationToken);
            return new(one.Temperature, one.Attitude.Name, log.Take(), [.. states]);
        }
        CaseExplanation[] cases = [.. discharge.Cases.Select(Explained)];
        return new(FlowExplainer.Sorted(log), [.. cases], [.. LeftOut]);
    }

    static Bottle RequireBottle(Layout layout)
    {
        ArgumentNullException.ThrowIfNull(layout);
        return layout.Supply is BottleSupply { Bottle: var bottle } ? bottle : throw new ArgumentException("A discharge needs a bottle.", nameof(layout));
    }
}
