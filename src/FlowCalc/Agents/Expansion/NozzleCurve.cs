namespace FlowCalc.Agents;

/// <summary>Mass flux G out of a nozzle over u = ln p before it: as ln(G²/(p − p_a)) where it ends at the surroundings' pressure, which is smooth down to rest, and as ln(G²/p²) where it is choked.</summary>
internal sealed class NozzleCurve
{
    const int PiecesBelow = 8;
    const int PiecesAbove = 16;
    const int PiecesNear = 8;

    // Beside the surroundings' pressure.
    const double Hair = 1e-6;

    // A phase boundary is rounded over this much of ln p on either side.
    const double JointHalf = 0.015;

    // Of ln p: the shortest stretch that is worth its nodes.
    const double Room = 3e-3;

    // Of ln p: how well the onset of choking has to be known, since the flux has no kink there, and how near its guesses are looked at in turn.
    const double OnsetWidth = 2e-4;
    static readonly double[] NearGuess = [0.03, 2e-3, 0.49 * OnsetWidth];

    // Right below a bubble point the first vapour counts most: parts of its pressure.
    static readonly double[] Near = [0.9, 0.98, 0.996];

    readonly PieceCurve curve;
    readonly double ambient;

    // First stretch that is choked, and what each stretch ends at.
    readonly int choked;
    readonly End[] kinds;

    NozzleCurve(PieceCurve curve, double ambient, int choked, End[] kinds) => (this.curve, this.ambient, this.choked, this.kinds) = (curve, ambient, choked, kinds);

    enum End { Top, Onset, Floor, Kink, Near }

    /// <summary>Makes the curve of a stream.</summary>
    /// <param name="stream">The stream.</param>
    /// <param name="top">Highest absolute pressure, Pa.</param>
    /// <param name="ambient">Absolute pressure outside, Pa.</param>
    /// <param name="model">How far a flashing agent boils.</param>
    /// <returns>The curve; null where the stream has no state somewhere on the way.</returns>
    public static NozzleCurve? TryBuild(IStream stream, double top, double ambient, NozzleModel model)
    {
        var low = ambient * (1 + Hair);
        var onset = FindOnset(stream, low, top, ambient, model);
        var bubble = stream.Kink < top ? stream.Kink : top;
        List<(double At, int Pieces, End Kind)> ends = [(top, bubble < top && top < 1.3 * bubble ? PiecesNear : PiecesAbove, End.Top)];
        if (onset < top) ends.Add((onset, PiecesBelow, End.Onset));
        if (stream.Floor > low) ends.Add((stream.Floor, PiecesNear, End.Floor));
        if (stream.Kink < top) ends.Add((stream.Kink, PiecesAbove, End.Kink));
        if (stream.At(0.999 * bubble).GasPart is > 0 and < 0.5) ends.AddRange(Near.Select(part => (part * bubble, PiecesNear, End.Near)));
        ends.RemoveAll(end => end.At < 1.02 * low && end.At < top);
        if (ends.Exists(end => end.Kind != End.Onset && Math.Abs(Math.Log(end.At / onset)) < Room)) ends.RemoveAll(end => end.Kind == End.Onset);
        // What is rounded has no room for a finer stretch.
        if (stream.Kink < top) ends.RemoveAll(end => end.At < stream.Kink && end.At > stream.Kink * Math.Exp(-1.5 * JointHalf) && end.At != onset);
        ends.Sort((a, b) => a.At.CompareTo(b.At));
        // Ends that all but meet would leave no room for a stretch.
        for (var i = ends.Count - 2; i >= 0; i--)
            if (ends[i].At > 0.9995 * ends[i + 1].At && ends[i].At != onset) ends.RemoveAt(i);
        List<double> breaks = [Math.Log(low)];
        List<int> pieces = [];
        foreach (var (at, count, _) in ends)
        {
            var isCorner = at == stream.Kink && Math.Log(at) + JointHalf < Math.Log(top) && Math.Log(at) - JointHalf > breaks[^1] + Room && (onset < at || double.IsPositiveInfinity(onset));
            breaks.Add(isCorner ? Math.Log(at) - JointHalf : Math.Log(at));
            pieces.Add(count);
            if (!isCorner) continue;
            breaks.Add(Math.Log(at) + JointHalf);
            pieces.Add(1);
        }
        var curve = new PieceCurve(1, breaks.ToArray(), pieces.ToArray());
        var (hint, logOnset) = (default(NozzleHint), Math.Log(onset));
        var choked = onset > low ? Math.Max(breaks.SkipLast(1).TakeWhile(start => start < logOnset - Room).Count(), 1) : 0;
        for (var s = curve.Stretches - 1; s >= 0; s--)
            for (var i = curve.NodesOf(s) - 1; i >= 0 && !curve.IsJoint(s); i--)
            {
                var pressure = Math.Exp(curve.Place(s, i)) * curve.Side(s, i);
                var flux = NozzleFlux.Of(stream.Nozzle(pressure), pressure, ambient, model, ref hint).Flux;
                if (!(flux > 0)) return null;
                curve.Value(s, i, 0) = Math.Log(flux * flux / (s >= choked ? pressure * pressure : pressure - ambient));
            }
        curve.Slopes(0);
        curve.Join();
        return new(curve, ambient, choked, [.. ends.Select(end => end.Kind)]);
    }

    /// <summary>Whether another curve is made of the same parts, so that the two can be put together.</summary>
    /// <param name="other">The other.</param>
    public bool IsLike(NozzleCurve other) => choked == other.choked && curve.IsLike(other.curve) && kinds.AsSpan().SequenceEqual(other.kinds);

    /// <summary>Puts curves alike together.</summary>
    /// <param name="curves">Curves, one or more.</param>
    /// <param name="weights">Their weights, which sum to 1.</param>
    public static NozzleCurve Mixed(ReadOnlySpan<NozzleCurve> curves, ReadOnlySpan<double> weights)
    {
        var parts = new PieceCurve[curves.Length];
        for (var k = 0; k < parts.Length; k++) parts[k] = curves[k].curve;
        return new(PieceCurve.Mixed(parts, weights), curves[0].ambient, curves[0].choked, curves[0].kinds);
    }

    /// <summary>Mass flux at discharge coefficient 1, kg/(m²·s), and its slope by u; 0 at and below the surroundings' pressure.</summary>
    /// <param name="log">u before the nozzle.</param>
    public (double Flux, double Slope) At(double log)
    {
        var pressure = Math.Exp(log);
        var over = pressure - ambient;
        if (!(over > 0)) return (0, 0);
        var piece = curve.Piece(log, out var part, out var stretch);
        var (value, slope) = (Math.Exp(curve.Value(piece, part, 0)), curve.Slope(piece, part, 0, stretch));
        var isChoked = stretch >= choked;
        var flux = isChoked ? pressure * Math.Sqrt(value) : Math.Sqrt(over * value);
        return (flux, 0.5 * flux * (slope + (isChoked ? 2 : pressure / over)));
    }

    // The pressure over which the throat's is over that outside; infinite where that is so nowhere.
    static double FindOnset(IStream stream, double low, double top, double ambient, NozzleModel model)
    {
        var hint = default(NozzleHint);
        double Throat(double pressure) => NozzleFlux.Of(stream.Nozzle(pressure), pressure, ambient, model, ref hint).Throat;
        bool IsChoked(double throat) => throat > ambient * (1 + 1e-9);
        if (!IsChoked(Throat(top))) return double.PositiveInfinity;
        if (IsChoked(Throat(low))) return low;
        // Throats lie between a fifth of the total pressure and all of it.
        var (under, over) = (Math.Log(low), Math.Log(Math.Min(5 * ambient, top)));
        var throat = Throat(Math.Exp(over));
        foreach (var near in NearGuess)
        {
            // The throat keeps its part of the total pressure almost, the better the nearer.
            var guess = over - Math.Log(throat / ambient);
            if (!IsChoked(throat) || !(guess - near > under && guess + near < over)) break;
            var next = Throat(Math.Exp(guess + near));
            if (IsChoked(next)) (over, throat) = (guess + near, next);
            else under = guess + near;
        }
        if (over - 2 * NearGuess[^1] > under && !IsChoked(Throat(Math.Exp(over - 2 * NearGuess[^1])))) under = over - 2 * NearGuess[^1];
        while (over - under > OnsetWidth)
        {
            var middle = 0.5 * (under + over);
            if (IsChoked(Throat(Math.Exp(middle)))) over = middle;
            else under = middle;
        }
        return Math.Exp(over);
    }
}
