using System.Collections.Immutable;

namespace FlowCalc.Explanations;

/// <summary>An equation that the engine works with, as it is told to a reader. Every symbol is in its SI unit.</summary>
public sealed record Equation
{
    /// <summary>Its name in steps, stable, such as <c>tube-friction</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Its name in words.</summary>
    public required string Name { get; init; }

    /// <summary>How it gives its result.</summary>
    public EquationKind Kind { get; init; }

    /// <summary>The right side, or both sides of an implicit one, each symbol whose value a step gives in braces.</summary>
    internal string Template { get; init; } = "";

    /// <summary>What stands for a longer expression in it, in the same way; empty for nothing.</summary>
    internal string With { get; init; } = "";

    /// <summary>The equation as text.</summary>
    public string Form
    {
        get
        {
            var plain = Unbraced(Template);
            var equation = Kind == EquationKind.Implicit ? plain : $"{Symbols[0].Symbol} = {plain}";
            return With.Length == 0 ? equation : $"{equation}, with {Unbraced(With)}";
        }
    }

    /// <summary>Its symbols, that of the result first. Of a sum, the second stands for every term.</summary>
    public required ImmutableArray<EquationSymbol> Symbols { get; init; }

    /// <summary>Where it holds, and what is taken beyond that.</summary>
    public required string Range { get; init; }

    /// <summary>Author, title or number, and year.</summary>
    public required string Source { get; init; }

    static string Unbraced(string template) => template.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal);
}
