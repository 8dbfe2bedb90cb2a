namespace FlowCalc.Studies.Tolerance;

/// <summary>Names of kinds as requests and answers have them.</summary>
public static class SpreadWords
{
    /// <summary>The name of a kind, such as <c>kFactor</c>.</summary>
    /// <param name="kind">The kind.</param>
    public static string Of(SpreadKind kind)
    {
        var name = kind.ToString();
        return char.ToLowerInvariant(name[0]) + name[1..];
    }
}
