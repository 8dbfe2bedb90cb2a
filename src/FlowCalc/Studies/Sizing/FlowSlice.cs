using FlowCalc.Losses;

namespace FlowCalc.Studies.Sizing;

/// <summary>A narrow range of the whole flow: within it, and with shares in their boxes, what each choice loses lies between two numbers.</summary>
/// <remarks>
/// The loss of a tube, its bends and fittings rises with its own flow, so that the ends of its flow's range are the ends of its loss. A tee's leg may gain as well as
/// lose: its K is a convex polynomial of the leg's part w of the flow, so that its greatest is at an end of w's range and its least at an end or where the quadratic turns.
/// Every range is widened by more than the solver's own rounding.
/// </remarks>
internal sealed class FlowSlice
{
    // The sweeps of the solver and the scalar losses agree to better than this.
    const double Rounding = 1e-7;

    readonly ChoiceTable table;
    readonly Span[] flows;

    FlowSlice(ChoiceTable table, Span total, Span[] shares, CancellationToken cancellation)
    {
        this.table = table;
        Total = total;
        var count = table.Network.Count;
        flows = new Span[count];
        double[] low = new double[count], high = new double[count];
        for (var node = 0; node < count; node++)
        {
            flows[node] = new(total.Low * shares[node].Low, total.High * shares[node].High);
            (low[node], high[node]) = (flows[node].Low, flows[node].High);
        }
        var (least, most) = (table.OwnLosses(low, cancellation), table.OwnLosses(high, cancellation));
        Supply = Widened(new(table.SupplyPressure(most[0][0]), table.SupplyPressure(least[0][0])));
        Losses = new Span[count][];
        NozzlePressures = new Span[count][];
        for (var node = 0; node < count; node++)
        {
            if (node > 0) Losses[node] = OfRun(node, shares, least[node], most[node]);
            if (table.Area[node] is { } areas) NozzlePressures[node] = [.. areas.Select(area => OfNozzle(flows[node], area))];
        }
    }

    /// <summary>Range of the whole flow, kg/s.</summary>
    public Span Total { get; }

    /// <summary>Gauge pressure at the supply point, Pa.</summary>
    public Span Supply { get; }

    /// <summary>Drop from the point that feeds a node to the node, Pa, by choice of the run before times the number of its own choices, plus its own choice.</summary>
    public Span[][] Losses { get; }

    /// <summary>Gauge pressure at which each choice of a nozzle passes a flow within its range, Pa; null where there is no nozzle.</summary>
    public Span[][] NozzlePressures { get; }

    /// <summary>A slice.</summary>
    /// <param name="table">The choices.</param>
    /// <param name="total">Range of the whole flow, kg/s.</param>
    /// <param name="shares">Share of each run; see <see cref="ShareBoxes"/>.</param>
    /// <param name="cancellation">Asked now and then.</param>
    public static FlowSlice Of(ChoiceTable table, Span total, Span[] shares, CancellationToken cancellation) => new(table, total, shares, cancellation);

    Span[] OfRun(int node, Span[] shares, double[] least, double[] most)
    {
        var parent = table.Network.Parent[node];
        var (own, inlets) = (table.Choices[node], table.Choices[parent]);
        var losses = new Span[inlets * own];
        var part = Part(node, shares);
        for (var at = 0; at < losses.Length; at++)
        {
            var loss = new Span(least[at % own], most[at % own]);
            if (table.Step[node] is { } steps) loss += new Span(steps[at] * Square(flows[node].Low) / table.Density, steps[at] * Square(flows[node].High) / table.Density);
            if (table.Leg[node] is { } legs) loss += OfLeg(legs[at], part, flows[parent]);
            losses[at] = Widened(loss);
        }
        return losses;
    }

    // The leg's part of the tee's flow, from the shares of both legs.
    Span Part(int node, Span[] shares)
    {
        var (parent, siblings) = (table.Network.Parent[node], new Span(0, 0));
        for (var other = parent + 1; other < shares.Length; other++)
            if (other != node && table.Network.Parent[other] == parent) siblings += shares[other];
        var (low, high) = (shares[node].Low + siblings.High, shares[node].High + siblings.Low);
        return new(low > 0 ? shares[node].Low / low * (1 - Rounding) : 0, high > 0 ? Math.Min(1, shares[node].High / high * (1 + Rounding)) : 1);
    }

    Span OfLeg(TeeLeg leg, Span part, Span inlet)
    {
        var (atLow, atHigh) = (leg.Coefficient(part.Low).Coefficient, leg.Coefficient(part.High).Coefficient);
        var turn = leg.Own > 0 ? -leg.Mixed / (2 * leg.Own) : part.Low;
        var bottom = Math.Clamp(turn, part.Low, part.High);
        // The term of eighth degree only adds to the quadratic.
        var least = Math.Min(leg.Inlet + bottom * (leg.Mixed + bottom * leg.Own), Math.Min(atLow, atHigh));
        var most = Math.Max(atLow, atHigh);
        var (slow, fast) = (Square(inlet.Low) / table.Density, Square(inlet.High) / table.Density);
        return new(least * (least < 0 ? fast : slow), most * (most < 0 ? slow : fast));
    }

    Span OfNozzle(Span flow, double area)
    {
        var scale = 1 / (2 * table.Density * area * area);
        // One that is shut may stand at any pressure below the surroundings'.
        var pressures = new Span(flow.Low > 0 ? scale * Square(flow.Low) : double.NegativeInfinity, scale * Square(flow.High));
        return Widened(pressures.And(new(table.LeastPressure, double.PositiveInfinity)));
    }

    Span Widened(Span span)
    {
        var by = Rounding * Math.Abs(table.Reservoir);
        return new(span.Low - by - Rounding * Math.Abs(span.Low), span.High + by + Rounding * Math.Abs(span.High));
    }

    static double Square(double x) => x * x;
}
