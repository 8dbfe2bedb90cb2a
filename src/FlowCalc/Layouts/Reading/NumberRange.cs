namespace FlowCalc.Layouts.Reading;

/// <summary>The values that a pure number may have.</summary>
/// <param name="What">The number with its article.</param>
/// <param name="Least">Least value; allowed itself unless <paramref name="IsOpen"/>.</param>
/// <param name="Most">Largest value, allowed itself.</param>
/// <param name="Words">The range in words.</param>
/// <param name="IsOpen">Whether the least value itself is outside.</param>
sealed record NumberRange(string What, double Least, double Most, string Words, bool IsOpen = false)
{
    public bool Holds(double value) => value <= Most && (IsOpen ? value > Least : value >= Least);
}
