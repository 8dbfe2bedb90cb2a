namespace FlowCalc.Workbench.Pictures;

/// <summary>A line of text.</summary>
/// <param name="At">Where its base line starts, is centred or ends.</param>
/// <param name="Text">The text.</param>
/// <param name="Size">Height of the letters' em, points.</param>
/// <param name="Ink">Its colour.</param>
public sealed record Words(Spot At, string Text, double Size, Ink Ink) : Mark
{
    /// <summary>Which part of the text <see cref="At"/> is.</summary>
    public TextAnchor Anchor { get; init; }

    /// <summary>Whether it is bold.</summary>
    public bool IsBold { get; init; }

    /// <summary>Turn about <see cref="At"/>, degrees, clockwise on the sheet.</summary>
    public double Turn { get; init; }
}
