using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>The room that a point takes in a tree: its symbol, and its name above, below, beside or behind it.</summary>
/// <param name="symbol">Its symbol.</param>
/// <param name="label">Its label.</param>
/// <param name="children">How many runs leave it.</param>
sealed class TreeNode(DrawnSymbol symbol, LabelBlock label, int children)
{
    /// <summary>Half the width of a leg that goes aside, points.</summary>
    public const double Leg = 6;

    const double Beside = 5, Small = 9;

    public DrawnSymbol Symbol => symbol;

    public LabelBlock Label => label;

    /// <summary>Whether nothing leaves it, so that its label stands behind it.</summary>
    public bool IsEnd => children == 0;

    /// <summary>Whether it is drawn as a bar from which its runs leave.</summary>
    public bool IsBar => symbol == DrawnSymbol.Junction && children > 1;

    /// <summary>Whether the branch of a tee goes up, so that its name stands below.</summary>
    public bool TurnsUp { get; set; }

    /// <summary>How far it reaches over the line of its feed.</summary>
    public double Up => HasNameAbove && !TurnsUp && !IsBar ? SymbolHalf + Beside + label.Height : SymbolHalf;

    /// <summary>How far it reaches under it.</summary>
    public double Down => TurnsUp ? SymbolHalf + Beside + label.Height : SymbolHalf;

    /// <summary>Height of what stands behind it.</summary>
    public double Behind => label.Height + 2;

    /// <summary>How far it reaches to the left of its place.</summary>
    public double Left => IsSupply ? Math.Max(48, label.Width + 2) : HasNameAbove ? Math.Max(Small, label.Width / 2 + 2) : Small;

    /// <summary>How far it reaches to the right.</summary>
    public double Right => IsEnd ? 13 : IsSupply ? Small : HasNameAbove ? Math.Max(Small, label.Width / 2 + 2) : Small + Beside + label.Width;

    bool IsSupply => symbol is DrawnSymbol.Bottle or DrawnSymbol.HeldSupply;

    bool HasNameAbove => !IsEnd && symbol != DrawnSymbol.Bullhead;

    double SymbolHalf => symbol is DrawnSymbol.Bottle or DrawnSymbol.HeldSupply ? 11 : Small;

    /// <summary>Where its label stands.</summary>
    /// <param name="at">Its place.</param>
    /// <param name="bar">Highest and lowest of its bar; its place where it has none.</param>
    public Box LabelBox(Spot at, (double Top, double Bottom) bar)
    {
        var (width, height) = (label.Width, label.Height);
        if (IsEnd) return Box.At(at.X + 13 + Beside, at.Y - height / 2, width, height);
        if (symbol == DrawnSymbol.Bullhead) return Box.At(at.X + Small + Beside, at.Y - height / 2, width, height);
        var top = TurnsUp ? bar.Bottom + SymbolHalf + Beside : bar.Top - (IsBar ? 2 : SymbolHalf) - 1 - height;
        return Box.At(IsSupply ? at.X - width : at.X - width / 2, top, width, height);
    }
}
