using System.Collections.Immutable;
using FlowCalc.Circuits;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Circuits;

/// <summary>What the rules of a circuit look at.</summary>
sealed class JudgedCircuit(Layout layout, Circuit circuit, CircuitResult answer, UnitSystem units, ImmutableArray<Limit> limits) : JudgedAnswer(layout, units, limits)
{
    public Circuit Circuit => circuit;

    public CircuitResult Answer => answer;

    /// <summary>A part by its name.</summary>
    public string Name(int part) => circuit.Parts[part].Name;

    /// <summary>A part's name as it stands in a sentence.</summary>
    public string Id(int part) => Wording.Id(Name(part));

    public string Text(double si, QuantityKind kind) => Wording.Of(si, kind, Units);

    /// <summary>A value that is beyond a bound, with digits enough to show it.</summary>
    public string Text(double si, double bound, QuantityKind kind) => Wording.Of(si, bound, kind, Units);

    /// <summary>How a circuit stands, such as <c>armed, with fire pressed</c>.</summary>
    public string Standing(CircuitState state, int push) => push < 0 ? $"{Word(state)}, with nothing pressed" : $"{Word(state)}, with {Id(push)} pressed";

    public static string Word(CircuitState state) => state switch
    {
        CircuitState.Off => "off",
        CircuitState.Test => "in test",
        _ => "armed",
    };

    /// <summary>A fault in words, such as <c>W1 open</c>.</summary>
    public string Words(CircuitFault fault) => fault.Kind switch
    {
        CircuitFaultKind.Open => $"{Id(fault.Place)} open",
        CircuitFaultKind.Chassis => $"{Wording.Id(circuit.Nodes[fault.Place])} touching the chassis",
        _ => $"{Id(fault.Place)} corroded",
    };
}
