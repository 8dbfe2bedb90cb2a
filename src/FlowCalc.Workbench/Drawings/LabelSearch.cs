using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Puts labels beside what they label, so that none lies on another or on a symbol; on a tube only where that is the lesser evil.</summary>
/// <remarks>
/// Each label is tried in sixteen directions from each of its anchors, ring by ring outwards, and takes the cheapest free place: near, off tubes, its leader off other labels. The order of the labels and of the
/// tries is fixed, so that the same layout is always drawn alike. The sheet has no edge yet, so that there is always a place.
/// </remarks>
/// <param name="taken">Symbols and tubes; labels are added as they are placed.</param>
sealed class LabelSearch(BoxGrid taken)
{
    const int Directions = 16, MostCrossings = 4;
    const double Clear = 1.5, FirstRing = 5, Widening = 1.5, Leaderless = 12, OnTube = 55, LeaderOverLabel = 40, LeaderOverTube = 18, FromAnchor = 4, LeaderHalf = 0.5;

    static readonly (double Sine, double Cosine)[] Compass = [.. Enumerable.Range(0, Directions).Select(direction => Math.SinCos(2 * Math.PI * direction / Directions))];

    /// <summary>Places a label.</summary>
    /// <param name="block">The label.</param>
    /// <param name="anchors">Where what it labels is, the best first.</param>
    /// <param name="away">How far from an anchor the label must stay at least, points.</param>
    /// <param name="cancel">Stops the search.</param>
    public PlacedLabel Place(LabelBlock block, ReadOnlySpan<Spot> anchors, double away, CancellationToken cancel)
    {
        var (best, bestCost, bestAnchor, bestSide) = (default(Box), double.PositiveInfinity, default(Spot), 0.0);
        for (var ring = FirstRing; ring < bestCost; ring = ring * Widening + 2)
        {
            cancel.ThrowIfCancellationRequested();
            for (var at = 0; at < anchors.Length; at++)
                for (var direction = 0; direction < Directions; direction++)
                {
                    var (sine, cosine) = Compass[direction];
                    var reach = away + ring;
                    // The box touches the ring with the side that looks to the anchor.
                    var (x, y) = (anchors[at].X + cosine * (reach + block.Width / 2), anchors[at].Y - sine * (reach + block.Height / 2));
                    var box = Box.At(x - block.Width / 2, y - block.Height / 2, block.Width, block.Height);
                    var cost = ring + FromAnchor * at + Bias(direction);
                    if (cost >= bestCost || taken.IsTaken(box.Grown(Clear))) continue;
                    // Only as many crossings are counted as make it too dear.
                    cost += OnTube * taken.Lines(box.Grown(Clear), bestCost < double.PositiveInfinity ? 1 + (int)((bestCost - cost) / OnTube) : MostCrossings);
                    if (cost >= bestCost) continue;
                    var end = box.Nearest(anchors[at]);
                    if (WayLine.Distance(end, anchors[at]) - away > Leaderless)
                    {
                        var start = Edge(anchors[at], end, away);
                        cost += LeaderOverLabel * taken.Boxes(start, WayLine.Between(start, end, 0.98), MostCrossings) + LeaderOverTube * taken.Lines(Box.Between(start, end), MostCrossings);
                    }
                    if (cost < bestCost) (best, bestCost, bestAnchor, bestSide) = (box, cost, anchors[at], cosine);
                }
        }
        var isOnTube = taken.Lines(best.Grown(Clear), 1) > 0;
        taken.Add(best);
        var near = best.Nearest(bestAnchor);
        var needsLeader = WayLine.Distance(near, bestAnchor) - away > Leaderless;
        if (!needsLeader) return new(block, best, bestSide < -0.5, [], isOnTube);
        var leaves = Edge(bestAnchor, near, away);
        taken.Add(leaves, near, LeaderHalf);
        return new(block, best, bestSide < -0.5, [leaves, near], isOnTube);
    }

    // Where a leader leaves what it comes from.
    static Spot Edge(Spot anchor, Spot end, double away) => WayLine.Between(anchor, end, Math.Min(1, (away + 1) / WayLine.Distance(anchor, end)));

    // Right and left read better than slanting, at the same distance.
    static double Bias(int direction) => direction % (Directions / 2) == 0 ? 0 : direction % (Directions / 4) == 0 ? 1 : 2;
}
