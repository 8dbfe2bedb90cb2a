namespace FlowCalc.Routes;

/// <summary>What lies between two such clips: as few equal spans as the spacing allows, each beside a fitting that the tube carries a fifth shorter.</summary>
/// <param name="Inner">Clips between the two.</param>
/// <param name="Unit">Length of a span that is not shortened, m.</param>
/// <param name="FirstFactor">The first span over that, dimensionless.</param>
readonly record struct ClipGap(long Inner, double Unit, double FirstFactor)
{
    /// <summary>How much of the spacing is left beside a fitting that the tube carries, dimensionless.</summary>
    public const double Beside = 0.8;

    // A gap that is a whole number of spans but for rounding stays it.
    const double Hair = 1e-9;

    /// <summary>Divides the gap between two clips.</summary>
    /// <param name="from">The first.</param>
    /// <param name="to">The second.</param>
    /// <param name="spacing">Largest distance, m.</param>
    public static ClipGap Between(ClipAnchor from, ClipAnchor to, double spacing)
    {
        var gap = to.At - from.At;
        var (first, last) = (from.IsBesideCarried ? Beside : 1, to.IsBesideCarried ? Beside : 1);
        if (gap <= Math.Min(first, last) * spacing * (1 + Hair)) return new ClipGap(0, gap, 1);
        // Two spans or more: the outer ones at their factors, whole ones between.
        var whole = Math.Max(0, Math.Ceiling(gap / spacing * (1 - Hair) - first - last));
        return new ClipGap((long)whole + 1, gap / (first + last + whole), first);
    }

    /// <summary>From the first of the two to a clip between them, m.</summary>
    /// <param name="inner">Its number, 1 or more.</param>
    public double To(int inner) => Unit * (FirstFactor + inner - 1);
}
