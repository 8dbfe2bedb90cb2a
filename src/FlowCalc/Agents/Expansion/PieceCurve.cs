using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace FlowCalc.Agents;

/// <summary>Several quantities over one variable as cubic pieces, uniform within each of a few stretches, so that a kink may lie between two stretches.</summary>
internal sealed class PieceCurve
{
    readonly int quantities;
    readonly double[] start, inverse;
    readonly int[] first, pieces;

    // Of each node the quantities and then their slopes times the step; the last node of a stretch and the first of the next stand at the same place.
    readonly double[] nodes;

    /// <summary>Makes room.</summary>
    /// <param name="quantities">How many.</param>
    /// <param name="breaks">Ends of the stretches, rising, one more than stretches.</param>
    /// <param name="pieces">Pieces of each stretch.</param>
    public PieceCurve(int quantities, ReadOnlySpan<double> breaks, ReadOnlySpan<int> pieces)
    {
        (this.quantities, this.pieces) = (quantities, pieces.ToArray());
        (start, inverse, first) = (new double[pieces.Length], new double[pieces.Length], new int[pieces.Length]);
        var count = 0;
        for (var s = 0; s < pieces.Length; s++)
        {
            (start[s], inverse[s], first[s]) = (breaks[s], pieces[s] / (breaks[s + 1] - breaks[s]), count);
            count += pieces[s] + 1;
        }
        nodes = new double[2 * quantities * count];
    }

    PieceCurve(int quantities, int[] pieces, int[] first, double[] start, double[] inverse, double[] nodes) =>
        (this.quantities, this.pieces, this.first, this.start, this.inverse, this.nodes) = (quantities, pieces, first, start, inverse, nodes);

    /// <summary>Puts curves of one shape together node by node, each with a weight, so that what lies at their breaks comes to lie between.</summary>
    /// <param name="curves">Curves, one or more.</param>
    /// <param name="weights">Their weights, which sum to 1.</param>
    public static PieceCurve Mixed(ReadOnlySpan<PieceCurve> curves, ReadOnlySpan<double> weights)
    {
        var like = curves[0];
        double[] start = new double[like.start.Length], inverse = new double[like.start.Length], nodes = new double[like.nodes.Length];
        for (var k = 0; k < curves.Length; k++)
        {
            var curve = curves[k];
            for (var s = 0; s < start.Length; s++)
            {
                start[s] += weights[k] * curve.start[s];
                inverse[s] += weights[k] / curve.inverse[s];
            }
            var weight = new Vector<double>(weights[k]);
            var from = MemoryMarshal.Cast<double, Vector<double>>(curve.nodes.AsSpan());
            var to = MemoryMarshal.Cast<double, Vector<double>>(nodes.AsSpan());
            for (var i = 0; i < to.Length; i++) to[i] += weight * from[i];
            for (var i = to.Length * Vector<double>.Count; i < nodes.Length; i++) nodes[i] += weights[k] * curve.nodes[i];
        }
        for (var s = 0; s < start.Length; s++) inverse[s] = 1 / inverse[s];
        return new(like.quantities, like.pieces, like.first, start, inverse, nodes);
    }

    /// <summary>Whether another curve has as many pieces in each of its stretches.</summary>
    /// <param name="other">The other.</param>
    public bool IsLike(PieceCurve other) => pieces.AsSpan().SequenceEqual(other.pieces);

    /// <summary>Number of stretches.</summary>
    public int Stretches => pieces.Length;

    /// <summary>Nodes of a stretch.</summary>
    /// <param name="stretch">Which.</param>
    public int NodesOf(int stretch) => pieces[stretch] + 1;

    /// <summary>Place of a node.</summary>
    /// <param name="stretch">Which stretch.</param>
    /// <param name="node">Which node of it.</param>
    public double Place(int stretch, int node) => start[stretch] + node / inverse[stretch];

    /// <summary>Factor that moves a node at a boundary between stretches a hair into its own.</summary>
    /// <param name="stretch">Which stretch.</param>
    /// <param name="node">Which node of it.</param>
    public double Side(int stretch, int node) =>
        node == 0 && stretch > 0 ? 1 + 1e-9 : node == pieces[stretch] && stretch < pieces.Length - 1 ? 1 - 1e-9 : 1;

    /// <summary>A quantity at a node.</summary>
    public ref double Value(int stretch, int node, int quantity) => ref nodes[2 * quantities * (first[stretch] + node) + quantity];

    /// <summary>Sets the slope of a quantity at a node.</summary>
    /// <param name="stretch">Which stretch.</param>
    /// <param name="node">Which node of it.</param>
    /// <param name="quantity">Which quantity.</param>
    /// <param name="slope">Its derivative by the variable.</param>
    public void SetSlope(int stretch, int node, int quantity, double slope) => nodes[2 * quantities * (first[stretch] + node) + quantities + quantity] = slope / inverse[stretch];

    /// <summary>Fills in the slopes of a quantity from its nodes, to the fourth order within each stretch.</summary>
    /// <param name="quantity">Which quantity.</param>
    public void Slopes(int quantity)
    {
        for (var s = 0; s < pieces.Length; s++)
        {
            var last = pieces[s];
            if (IsJoint(s)) continue;
            for (var i = 0; i <= last; i++)
            {
                var k = Math.Clamp(i - 2, 0, Math.Max(last - 4, 0));
                SetSlope(s, i, quantity, inverse[s] * (last < 4 ? Short(s, i, quantity, last) : Five(s, k, i - k, quantity)));
            }
        }
    }

    /// <summary>Whether a stretch of one piece joins its neighbours, with their values and slopes, and has none of its own.</summary>
    /// <param name="stretch">Which.</param>
    public bool IsJoint(int stretch) => pieces[stretch] == 1 && stretch > 0 && stretch < pieces.Length - 1;

    /// <summary>Gives every joint the values and slopes of its neighbours.</summary>
    public void Join()
    {
        for (var s = 1; s < pieces.Length - 1; s++)
        {
            if (!IsJoint(s)) continue;
            for (var q = 0; q < quantities; q++)
            {
                Value(s, 0, q) = Value(s - 1, pieces[s - 1], q);
                Value(s, 1, q) = Value(s + 1, 0, q);
                SetSlope(s, 0, q, OwnSlope(s - 1, pieces[s - 1], q));
                SetSlope(s, 1, q, OwnSlope(s + 1, 0, q));
            }
        }
    }

    double OwnSlope(int stretch, int node, int quantity) => nodes[2 * quantities * (first[stretch] + node) + quantities + quantity] * inverse[stretch];

    /// <summary>The piece that holds a place, its part from 0 to 1, and its stretch; beyond the ends the outermost piece goes on.</summary>
    /// <param name="place">The variable.</param>
    /// <param name="part">Part of the piece.</param>
    /// <param name="stretch">Which stretch.</param>
    public ReadOnlySpan<double> Piece(double place, out double part, out int stretch) => nodes.AsSpan(2 * quantities * Node(place, out part, out stretch), 4 * quantities);

    // The node before a place.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    int Node(double place, out double part, out int stretch)
    {
        var s = start.Length - 1;
        while (s > 0 && place < start[s]) s--;
        stretch = s;
        var x = (place - start[s]) * inverse[s];
        // Not a number becomes 0.
        var i = Math.Clamp((int)x, 0, pieces[s] - 1);
        part = x - i;
        return first[s] + i;
    }

    /// <summary>All quantities of a curve of four at a place, and their slopes by the variable.</summary>
    /// <param name="place">The variable.</param>
    /// <param name="values">The quantities.</param>
    /// <param name="slopes">Their slopes.</param>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public void Four(double place, out Vector256<double> values, out Vector256<double> slopes)
    {
        var piece = nodes.AsSpan(8 * Node(place, out var part, out var stretch), 16);
        ref var at = ref MemoryMarshal.GetReference(piece);
        var (a, b, c, d) = (Vector256.LoadUnsafe(ref at), Vector256.LoadUnsafe(ref at, 4), Vector256.LoadUnsafe(ref at, 8), Vector256.LoadUnsafe(ref at, 12));
        var rest = 1 - part;
        values = rest * rest * ((1 + 2 * part) * a + part * b) + part * part * ((3 - 2 * part) * c - rest * d);
        slopes = inverse[stretch] * (6 * part * rest * (c - a) + rest * (1 - 3 * part) * b + part * (3 * part - 2) * d);
    }

    /// <summary>One quantity within a piece, and its slope by the variable.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="part">Part of it.</param>
    /// <param name="quantity">Which quantity.</param>
    public double Value(ReadOnlySpan<double> piece, double part, int quantity)
    {
        var (a, b, c, d) = (piece[quantity], piece[quantities + quantity], piece[2 * quantities + quantity], piece[3 * quantities + quantity]);
        var rest = 1 - part;
        return rest * rest * ((1 + 2 * part) * a + part * b) + part * part * ((3 - 2 * part) * c - rest * d);
    }

    /// <summary>Slope of one quantity within a piece by the variable.</summary>
    /// <param name="piece">The piece.</param>
    /// <param name="part">Part of it.</param>
    /// <param name="quantity">Which quantity.</param>
    /// <param name="stretch">Its stretch.</param>
    public double Slope(ReadOnlySpan<double> piece, double part, int quantity, int stretch)
    {
        var (a, b, c, d) = (piece[quantity], piece[quantities + quantity], piece[2 * quantities + quantity], piece[3 * quantities + quantity]);
        return inverse[stretch] * (6 * part * (1 - part) * (c - a) + (1 - part) * (1 - 3 * part) * b + part * (3 * part - 2) * d);
    }

    /// <summary>One quantity at a place.</summary>
    /// <param name="place">The variable.</param>
    /// <param name="quantity">Which quantity.</param>
    public double At(double place, int quantity) => Value(Piece(place, out var part, out _), part, quantity);

    double Short(int stretch, int node, int quantity, int last)
    {
        var (low, high) = (Math.Max(node - 1, 0), Math.Min(node + 1, last));
        return (Value(stretch, high, quantity) - Value(stretch, low, quantity)) / (high - low);
    }

    // Derivatives at each of five equidistant nodes (Abramowitz, Stegun 25.3, from memory).
    double Five(int stretch, int k, int at, int q)
    {
        double y0 = Value(stretch, k, q), y1 = Value(stretch, k + 1, q), y2 = Value(stretch, k + 2, q), y3 = Value(stretch, k + 3, q), y4 = Value(stretch, k + 4, q);
        return at switch
        {
            0 => (-25 * y0 + 48 * y1 - 36 * y2 + 16 * y3 - 3 * y4) / 12,
            1 => (-3 * y0 - 10 * y1 + 18 * y2 - 6 * y3 + y4) / 12,
            2 => (y0 - 8 * y1 + 8 * y3 - y4) / 12,
            3 => (-y0 + 6 * y1 - 18 * y2 + 10 * y3 + 3 * y4) / 12,
            _ => (3 * y0 - 16 * y1 + 36 * y2 - 48 * y3 + 25 * y4) / 12,
        };
    }
}
