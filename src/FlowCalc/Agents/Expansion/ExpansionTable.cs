namespace FlowCalc.Agents;

/// <summary>A stream's way through tubes and nozzles as curves over u = ln p, made once and read by the solver. Immutable.</summary>
/// <remarks>Cubic pieces, with nodes at phase boundaries and where a nozzle begins to choke. Accuracy against the stream itself is measured by the tests.</remarks>
internal sealed class ExpansionTable
{
    // p/ρ: constant for an ideal gas, linear in p for a flashing liquid (the ω law) and nearly so for a liquid.
    const int Quotient = 0;
    const int Psi = 1;
    const int Work = 2;
    const int LogViscosity = 3;

    // A phase boundary is rounded over this much of ln p on either side: its corner is sharper than Newton's method can take.
    const double JointHalf = 0.015;
    const double FloorJoint = 0.002;

    // What is left above a rounded boundary.
    const double RoomAbove = 0.01;

    // Of the slope of ln ρ by ln p: a liquid that hardly gives; keeps the choking flux finite.
    const double LeastSlope = 1e-7;

    // Gauss's three points between 0 and 1.
    static readonly (double Place, double Weight)[] Gauss = [(0.1127016653792583, 5.0 / 18), (0.5, 8.0 / 18), (0.8872983346207417, 5.0 / 18)];

    readonly PieceCurve path;
    readonly NozzleCurve nozzle;
    readonly double potentialOutside, workOutside;

    ExpansionTable(PieceCurve path, NozzleCurve nozzle, double referenceDensity, double low, double top, double logAmbient)
    {
        (this.path, this.nozzle, ReferenceDensity, LogLow, LogTop, LogAmbient) = (path, nozzle, referenceDensity, low, top, logAmbient);
        (potentialOutside, workOutside) = (path.At(LogAmbient, Psi), path.At(LogAmbient, Work));
    }

    /// <summary>Reference density, kg/m³: that at the highest pressure.</summary>
    public double ReferenceDensity { get; }

    /// <summary>Highest u.</summary>
    public double LogTop { get; }

    /// <summary>Lowest u.</summary>
    public double LogLow { get; }

    /// <summary>u outside the nozzles.</summary>
    public double LogAmbient { get; }

    /// <summary>Highest pressure of a table that serves a reservoir, Pa: a little over its own, and over the surroundings'.</summary>
    /// <param name="pressure">Absolute pressure of the reservoir, Pa.</param>
    /// <param name="ambient">Absolute pressure outside the nozzles, Pa.</param>
    public static double Top(double pressure, double ambient) => Math.Max(1.04 * pressure, 1.1 * ambient);

    /// <summary>Makes the table of a stream.</summary>
    /// <param name="stream">The stream.</param>
    /// <param name="top">Highest absolute pressure, Pa.</param>
    /// <param name="ambient">Absolute pressure outside the nozzles, Pa.</param>
    /// <param name="model">How far a flashing agent boils in the nozzles.</param>
    /// <returns>The table; null where the stream has no state somewhere on the way within its data.</returns>
    public static ExpansionTable? TryBuild(IStream stream, double top, double ambient, NozzleModel model)
    {
        // A boundary right below the top would leave no room to round it.
        return Math.Log(top / stream.Kink) is > 1e-6 and < JointHalf + RoomAbove && TryMake(stream, stream.Kink * Math.Exp(JointHalf + RoomAbove), ambient, model) is { } raised ? raised : TryMake(stream, top, ambient, model);
    }

    static ExpansionTable? TryMake(IStream stream, double top, double ambient, NozzleModel model)
    {
        var (low, high) = (Math.Log(0.5 * ambient), Math.Log(top));
        List<(double At, int Pieces)> ends = [];
        foreach (var (pressure, pieces, half) in (ReadOnlySpan<(double, int, double)>)[(stream.Floor, 12, FloorJoint), (stream.Kink, 48, JointHalf)])
            if (Math.Log(pressure) is var at && at - half > low + 1e-3 && at + half < high - 1e-6)
            {
                ends.Add((at - half, pieces));
                ends.Add((at + half, 1));
            }
        // A liquid hardly changes above its bubble point; what flashes or is a gas needs the nodes.
        var isCompressed = ends.Count > 0 && ends[^1].At == Math.Log(stream.Kink) + JointHalf && high - ends[^1].At < 0.3;
        ends.Add((high, isCompressed ? 6 : double.IsNaN(stream.Kink) ? 40 : 48));
        var path = new PieceCurve(4, [low, .. ends.Select(end => end.At)], [.. ends.Select(end => end.Pieces)]);
        Fill(path, stream);
        var reference = top / path.At(high, Quotient);
        if (!double.IsFinite(reference)) return null;
        Integrate(path, reference);
        var isFinite = double.IsFinite(path.At(low, Psi) + path.At(high, Psi) + path.At(high, Work));
        return isFinite && NozzleCurve.TryBuild(stream, top, ambient, model) is { } nozzle ? new(path, nozzle, reference, low, high, Math.Log(ambient)) : null;
    }

    /// <summary>Whether another table is made of the same parts, so that the two can be put together.</summary>
    /// <param name="other">The other.</param>
    public bool IsLike(ExpansionTable other) => path.IsLike(other.path) && nozzle.IsLike(other.nozzle);

    /// <summary>The table of a stream between those of other streams, by interpolation from node to node: where they have a boundary, it has one between.</summary>
    /// <param name="tables">Tables alike, one or more, for the same surroundings.</param>
    /// <param name="weights">Their weights, which sum to 1.</param>
    public static ExpansionTable Mixed(ReadOnlySpan<ExpansionTable> tables, ReadOnlySpan<double> weights)
    {
        var (paths, nozzles) = (new PieceCurve[tables.Length], new NozzleCurve[tables.Length]);
        double density = 0, top = 0;
        for (var k = 0; k < tables.Length; k++)
        {
            (paths[k], nozzles[k]) = (tables[k].path, tables[k].nozzle);
            density += weights[k] * tables[k].ReferenceDensity;
            top += weights[k] * tables[k].LogTop;
        }
        return new(PieceCurve.Mixed(paths, weights), NozzleCurve.Mixed(nozzles, weights), density, tables[0].LogLow, top, tables[0].LogAmbient);
    }

    /// <summary>State at a pressure.</summary>
    /// <param name="log">u.</param>
    public TablePoint At(double log)
    {
        path.Four(log, out var values, out var slopes);
        var quotient = values[Quotient];
        return new(values[Psi] - potentialOutside, values[Work] - workOutside, Math.Exp(log) / quotient, quotient, Math.Max(1 - slopes[Quotient] / quotient, LeastSlope));
    }

    /// <summary>u of a potential.</summary>
    /// <param name="potential">Ψ, Pa.</param>
    /// <param name="guess">u nearby.</param>
    public double LogOf(double potential, double guess)
    {
        var log = guess;
        for (var i = 0; i < 60; i++)
        {
            var at = At(log);
            var step = Math.Clamp((potential - at.Potential) * ReferenceDensity / (at.Density * at.Density * at.Quotient), -1, 1);
            log = Math.Clamp(log + step, LogLow - 1, LogTop + 1);
            // Newton squares what is left.
            if (Math.Abs(step) < 1e-7) break;
        }
        return log;
    }

    /// <summary>u at which the local choking flux √(ρ·p/(d ln ρ/d ln p)) is a flux; at a phase boundary where it jumps over it, the boundary; the lowest u where it is below all.</summary>
    /// <param name="flux">Mass flux, kg/(m²·s).</param>
    public double ChokingLog(double flux)
    {
        var square = flux * flux;
        for (var stretch = path.Stretches - 1; stretch >= 0; stretch--)
        {
            var last = path.NodesOf(stretch) - 1;
            var (low, high) = (path.Place(stretch, 0), path.Place(stretch, last));
            // Just inside, since at the boundary itself the stretch above begins.
            var inside = 1e-9 * (high - low);
            if (square < Square(low + inside)) continue;
            if (square >= Square(high - inside)) return high;
            for (var i = 0; i < 60 && high - low > 1e-12; i++)
            {
                var middle = 0.5 * (low + high);
                if (Square(middle) > square) high = middle;
                else low = middle;
            }
            return 0.5 * (low + high);
        }
        return LogLow;
    }

    /// <summary>Mass flux out of a nozzle of discharge coefficient 1, kg/(m²·s), and its slope by u.</summary>
    /// <param name="log">u before the nozzle.</param>
    public (double Flux, double Slope) Nozzle(double log) => nozzle.At(log);

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="log">u.</param>
    public double Viscosity(double log) => Math.Exp(path.At(log, LogViscosity));

    double Square(double log)
    {
        var at = At(log);
        return at.Density * at.Density * at.Quotient / at.DensitySlope;
    }

    // From the top down, so that a stream which starts from its last answer walks along the way.
    static void Fill(PieceCurve path, IStream stream)
    {
        for (var s = path.Stretches - 1; s >= 0; s--)
            for (var i = path.NodesOf(s) - 1; i >= 0 && !path.IsJoint(s); i--)
            {
                // On either side of a boundary, not on it.
                var side = path.Side(s, i);
                var state = stream.At(Math.Exp(path.Place(s, i)) * side);
                path.Value(s, i, Quotient) = Math.Exp(path.Place(s, i)) * side / state.Density;
                path.Value(s, i, LogViscosity) = Math.Log(state.Viscosity);
            }
        foreach (var quantity in (ReadOnlySpan<int>)[Quotient, LogViscosity]) path.Slopes(quantity);
        path.Join();
    }

    static void Integrate(PieceCurve path, double reference)
    {
        double potential = 0, work = 0;
        for (var s = 0; s < path.Stretches; s++)
        {
            for (var i = 0; i < path.NodesOf(s); i++)
            {
                var place = path.Place(s, i);
                if (i > 0)
                {
                    var before = path.Place(s, i - 1);
                    foreach (var (part, weight) in Gauss)
                    {
                        // By the stretch's own piece: at its end the next one begins.
                        var at = before + part * (place - before);
                        var (pressure, quotient) = (Math.Exp(at), path.At(at, Quotient));
                        potential += weight * (place - before) * pressure * pressure / quotient / reference;
                        work += weight * (place - before) * quotient;
                    }
                }
                (path.Value(s, i, Psi), path.Value(s, i, Work)) = (potential, work);
                var here = path.Value(s, i, Quotient);
                path.SetSlope(s, i, Psi, Math.Exp(2 * place) / here / reference);
                path.SetSlope(s, i, Work, here);
            }
        }
    }
}
