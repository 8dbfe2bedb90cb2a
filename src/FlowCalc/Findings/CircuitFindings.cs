using FlowCalc.Circuits;
using FlowCalc.Findings.Circuits;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Holds a layout's firing circuit against the rules.</summary>
public static class CircuitFindings
{
    /// <summary>Judges a circuit and looks for cures.</summary>
    /// <param name="layout">The layout; it has a circuit.</param>
    /// <param name="answer">What its circuit does.</param>
    /// <param name="units">The system of units that messages are written in.</param>
    /// <param name="cancellationToken">Asked before every solve of a cure.</param>
    /// <returns>Verdict, findings and the limits applied. The same circuit gives the same judgement, to the last character.</returns>
    /// <exception cref="ArgumentException">The layout has no circuit, the answer is not of it, or the layout states a limit that cannot be stated.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static CircuitJudgement Judge(Layout layout, CircuitResult answer, UnitSystem units, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(answer);
        if (layout.Circuit is not { } circuit) throw new ArgumentException("The layout has no circuit.", nameof(layout));
        if (answer.TestCurrents.Length != circuit.Of<Actuator>().Count()) throw new ArgumentException("The answer is not of this circuit.", nameof(answer));

        var judged = new JudgedCircuit(layout, circuit, answer, units, DefaultLimits.For(layout.Limits, LimitUse.Circuit));
        var findings = CircuitRules.Find(judged);
        CircuitCures.Add(judged, findings, cancellationToken);
        return new CircuitJudgement(findings.Verdict, findings.InOrder(), judged.Limits);
    }
}
