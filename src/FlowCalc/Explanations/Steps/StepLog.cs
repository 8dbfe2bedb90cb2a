using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace FlowCalc.Explanations;

/// <summary>Writes down the steps of a calculation, and keeps what the run at hand loses.</summary>
internal sealed class StepLog
{
    readonly List<ExplanationStep> steps = [];
    ExplainedPlace place;
    string id = "";

    /// <summary>The equations used so far.</summary>
    public HashSet<Equation> Used { get; } = new(ReferenceEqualityComparer.Instance);

    /// <summary>What the run at hand loses, in the order of its steps.</summary>
    public List<(LossKind Kind, double Drop)> Losses { get; } = [];

    /// <summary>Whether losses are drops of the answer; of a gas they are drops of Ψ, which the answer has in proportion.</summary>
    public bool IsCounting { get; set; } = true;

    /// <summary>What stands for <see cref="SymbolUnit.OfFigure"/> in the steps that come.</summary>
    public SymbolUnit FigureUnit { get; set; } = SymbolUnit.Plain;

    /// <summary>Whether the place at hand is the supply.</summary>
    public bool IsAtSupply => place == ExplainedPlace.Supply;

    /// <summary>Goes on to another place.</summary>
    /// <param name="at">What it is.</param>
    /// <param name="name">Its id.</param>
    public void At(ExplainedPlace at, string name)
    {
        (place, id) = (at, name);
        Losses.Clear();
    }

    /// <summary>Writes a step down.</summary>
    /// <param name="equation">The equation.</param>
    /// <param name="part">What it is about.</param>
    /// <param name="result">What came out.</param>
    /// <param name="values">What went in, in the order of the equation's symbols.</param>
    /// <returns>The result.</returns>
    public double Add(Equation equation, string part, double result, params ReadOnlySpan<double> values) => Write(null, equation, part, result, values);

    /// <summary>Writes a loss of the run at hand down.</summary>
    /// <param name="kind">What it counts as.</param>
    /// <param name="equation">The equation.</param>
    /// <param name="part">What it is about.</param>
    /// <param name="drop">What came out, Pa.</param>
    /// <param name="values">What went in, in the order of the equation's symbols.</param>
    public void Loss(LossKind kind, Equation equation, string part, double drop, params ReadOnlySpan<double> values)
    {
        Losses.Add((kind, drop));
        Write(IsCounting ? kind : null, equation, part, drop, values);
    }

    /// <summary>Writes a drop of the answer down.</summary>
    /// <inheritdoc cref="Loss"/>
    public double Drop(LossKind kind, Equation equation, string part, double drop, params ReadOnlySpan<double> values) => Write(kind, equation, part, drop, values);

    /// <summary>Writes a sum down.</summary>
    /// <param name="equation">A sum.</param>
    /// <param name="part">What it is about.</param>
    /// <param name="result">What came out.</param>
    /// <param name="terms">The terms.</param>
    /// <returns>The result.</returns>
    public double Sum(Equation equation, string part, double result, IEnumerable<double> terms)
    {
        var (term, values) = (equation.Symbols[1], ImmutableArray.CreateBuilder<StepValue>());
        foreach (var number in terms)
            values.Add(new(FormattableString.Invariant($"{term.Symbol[..^1]}{values.Count + 1}"), number, Unit(term)));
        Keep(null, equation, part, values.ToImmutable(), result);
        return result;
    }

    /// <summary>The steps so far, handed over.</summary>
    public ImmutableArray<ExplanationStep> Take()
    {
        ImmutableArray<ExplanationStep> taken = [.. steps];
        steps.Clear();
        return taken;
    }

    double Write(LossKind? counts, Equation equation, string part, double result, ReadOnlySpan<double> values)
    {
        if (values.Length != equation.Symbols.Length - 1)
            throw new ArgumentException($"{equation.Id} has {equation.Symbols.Length - 1} symbols beside its result.", nameof(values));
        var named = new StepValue[values.Length];
        for (var i = 0; i < named.Length; i++) named[i] = new(equation.Symbols[i + 1].Symbol, values[i], Unit(equation.Symbols[i + 1]));
        Keep(counts, equation, part, ImmutableCollectionsMarshal.AsImmutableArray(named), result);
        return result;
    }

    void Keep(LossKind? counts, Equation equation, string part, ImmutableArray<StepValue> values, double result)
    {
        Used.Add(equation);
        steps.Add(new(place, id, part, counts, equation, values, new(equation.Symbols[0].Symbol, result, Unit(equation.Symbols[0]))));
    }

    SymbolUnit Unit(EquationSymbol symbol) => symbol.Unit == SymbolUnit.OfFigure ? FigureUnit : symbol.Unit;
}
