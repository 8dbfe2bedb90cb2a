namespace FlowCalc.Agents;

/// <summary>The greatest mass flux √(2·∫v dp)/v that an expansion gives between its total pressure and the surroundings.</summary>
internal static class NozzleFlux
{
    // The flux is flat at its greatest: a parabola through points this near, in ln p, gives it to 1e-9.
    const double Near = 2e-3;
    const double FirstStep = 0.06;
    const int MostSteps = 60;

    /// <summary>Flux at discharge coefficient 1, and the pressure in the throat.</summary>
    /// <param name="way">The expansion.</param>
    /// <param name="stagnation">Absolute total pressure, Pa.</param>
    /// <param name="ambient">Absolute pressure outside, Pa.</param>
    /// <param name="model">How far the agent boils.</param>
    /// <returns>kg/(m²·s) and Pa; no flux where the outside is not below.</returns>
    public static (double Flux, double Throat) Of(INozzleWay way, double stagnation, double ambient, NozzleModel model)
    {
        var hint = default(NozzleHint);
        return Of(way, stagnation, ambient, model, ref hint);
    }

    /// <summary>The same, from the answer nearby.</summary>
    /// <param name="way">The expansion.</param>
    /// <param name="stagnation">Absolute total pressure, Pa.</param>
    /// <param name="ambient">Absolute pressure outside, Pa.</param>
    /// <param name="model">How far the agent boils.</param>
    /// <param name="hint">Ratios of throat to total pressure nearby; this one's on return.</param>
    /// <returns>As without.</returns>
    public static (double Flux, double Throat) Of(INozzleWay way, double stagnation, double ambient, NozzleModel model, ref NozzleHint hint)
    {
        if (!(stagnation > ambient)) return (0, stagnation);
        if (way.TrySonic(ambient, ref hint, out var sonic)) return sonic;
        var answer = Greatest(way, stagnation, ambient, Part(way, stagnation, ambient, model, ref hint), hint.Throat is > 0 ? hint.Throat : 0.6);
        hint.Throat = answer.Throat / stagnation;
        return answer;
    }

    /// <summary>Part of the equilibrium's boiling that happens in the nozzle, 0 to 1; 1 where there is no liquid.</summary>
    /// <param name="way">The expansion.</param>
    /// <param name="stagnation">Absolute total pressure, Pa.</param>
    /// <param name="ambient">Absolute pressure outside, Pa.</param>
    /// <param name="model">How far the agent boils.</param>
    public static double PartThatBoils(INozzleWay way, double stagnation, double ambient, NozzleModel model)
    {
        var hint = default(NozzleHint);
        return way.TrySonic(ambient, ref hint, out _) ? 1 : Part(way, stagnation, ambient, model, ref hint);
    }

    static double Part(INozzleWay way, double stagnation, double ambient, NozzleModel model, ref NozzleHint hint)
    {
        if (model == NozzleModel.Frozen) return way.LeastPart;
        if (model == NozzleModel.Equilibrium || !way.HasDelay) return 1;
        // The critical ratio is that of the choked equilibrium, even where the outside is above it.
        hint.Equilibrium = Greatest(way, stagnation, Math.Min(ambient, 0.02 * stagnation), 1, hint.Equilibrium is > 0 ? hint.Equilibrium : 0.6).Throat / stagnation;
        return way.Part(hint.Equilibrium);
    }

    static (double Flux, double Throat) Greatest(INozzleWay way, double stagnation, double ambient, double part, double ratio)
    {
        var (lowest, highest) = (Math.Log(ambient), Math.Log(stagnation));
        double Of(double log) => Flux(way, log, part);
        var middle = Math.Clamp(highest + Math.Log(ratio), lowest, highest);
        var (low, high) = (Math.Max(middle - FirstStep, lowest), Math.Min(middle + FirstStep, highest));
        var (atLow, atMiddle, atHigh) = (Of(low), Of(middle), Of(high));
        // Walk until the middle is the greatest of three, or the outside is.
        for (var i = 0; i < MostSteps && (atLow > atMiddle || atHigh > atMiddle); i++)
        {
            if (atLow >= atHigh)
            {
                (high, atHigh, middle, atMiddle) = (middle, atMiddle, low, atLow);
                if (low <= lowest) break;
                low = Math.Max(low - 2 * (high - low), lowest);
                atLow = Of(low);
            }
            else
            {
                (low, atLow, middle, atMiddle) = (middle, atMiddle, high, atHigh);
                high = Math.Min(high + 2 * (high - low), 0.5 * (high + highest));
                atHigh = Of(high);
            }
        }
        if (middle <= lowest && Of(lowest + Near) <= atMiddle) return (atMiddle, ambient);
        for (var i = 0; i < MostSteps && high - low > Near; i++)
        {
            var vertex = Vertex(low, atLow, middle, atMiddle, high, atHigh);
            // A vertex on the middle, or an uneven bracket, is helped on by a step into the wider side.
            var least = Math.Max(0.02 * (high - low), 0.2 * Near);
            if (!(vertex > low + least && vertex < high - least) || Math.Abs(vertex - middle) < least)
                vertex = high - middle > middle - low ? middle + Math.Min(Math.Max(least, 0.3 * (high - middle)), 0.5 * (high - middle)) : middle - Math.Min(Math.Max(least, 0.3 * (middle - low)), 0.5 * (middle - low));
            var at = Of(vertex);
            if (at > atMiddle)
            {
                if (vertex > middle) (low, atLow) = (middle, atMiddle);
                else (high, atHigh) = (middle, atMiddle);
                (middle, atMiddle) = (vertex, at);
            }
            else if (vertex > middle) (high, atHigh) = (vertex, at);
            else (low, atLow) = (vertex, at);
        }
        return (atMiddle, Math.Exp(middle));
    }

    static double Vertex(double a, double fa, double b, double fb, double c, double fc)
    {
        var (left, right) = ((b - a) * (fb - fc), (b - c) * (fb - fa));
        return b - 0.5 * ((b - a) * left - (b - c) * right) / (left - right);
    }

    static double Flux(INozzleWay way, double log, double part)
    {
        var pressure = Math.Exp(log);
        var (volume, work) = part > 0 ? way.Equilibrium(pressure) : default;
        if (part < 1)
        {
            var (frozenVolume, frozenWork) = way.Frozen(pressure);
            (volume, work) = (frozenVolume + part * (volume - frozenVolume), frozenWork + part * (work - frozenWork));
        }
        return work > 0 ? Math.Sqrt(2 * work) / volume : 0;
    }
}
