namespace FlowCalc.Explanations;

/// <summary>How an equation gives its result.</summary>
public enum EquationKind
{
    /// <summary>The result stands alone on the left.</summary>
    Explicit,

    /// <summary>The result is the value that makes both sides equal.</summary>
    Implicit,

    /// <summary>The result is the sum of as many terms as a step has.</summary>
    Sum,
}
