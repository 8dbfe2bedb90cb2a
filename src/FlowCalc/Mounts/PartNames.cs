namespace FlowCalc.Mounts;

/// <summary>Names of the parts of a mount, as findings and answers have them.</summary>
public static class PartNames
{
    /// <summary>The name of a bolt, a strap or an end.</summary>
    /// <param name="part">The part.</param>
    /// <param name="number">Which bolt or strap, from 0; an end has none.</param>
    /// <returns>Such as <c>bolt 1</c>, <c>adapter bolt 2</c>, <c>strap 1</c>, <c>outlet end</c>.</returns>
    public static string Of(MountPart part, int number) => part switch
    {
        MountPart.Structure => FormattableString.Invariant($"bolt {number + 1}"),
        MountPart.Adapter => FormattableString.Invariant($"adapter bolt {number + 1}"),
        MountPart.Strap => FormattableString.Invariant($"strap {number + 1}"),
        MountPart.BaseEnd => "base end",
        _ => "outlet end",
    };
}
