using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>The sizes that a quantity may have: generous, and such that every number computed from them stays finite.</summary>
/// <param name="Kind">What it measures.</param>
/// <param name="What">The quantity with its article, such as <c>a bore</c>.</param>
/// <param name="Least">Least value, SI; allowed itself unless <paramref name="IsOpen"/>.</param>
/// <param name="Most">Largest value, SI, allowed itself.</param>
/// <param name="Words">The range in words; the schema has the same.</param>
/// <param name="IsOpen">Whether the least value itself is outside.</param>
sealed record SizeRange(QuantityKind Kind, string What, double Least, double Most, string Words, bool IsOpen = false)
{
    public bool Holds(double si) => si <= Most && (IsOpen ? si > Least : si >= Least);
}
