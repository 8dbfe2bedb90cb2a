namespace FlowCalc.Agents;

/// <summary>The greatest mass flux √(2·∫v dp)/v that an expansion gives between its total pressure and the surroundings.</summary>
internal static class NozzleFlux
{
    // Golden section: the flux is flat at its greatest, so that 1e-6 of pressure is 1e-12 of flux.
    const double Golden = 0.6180339887498949;
    const int MostSteps = 34;

    /// <summary>Flux at discharge coefficient 1, and the pressure in the throat.</summary>
    /// <param name="way">The expansion.</param>
    /// <param name="stagnation">Absolute total pressure, Pa.</param>
    /// <param name="ambient">Absolute pressure outside, Pa.</param>
    /// <param name="model">How far the agent boils.</param>
    /// <returns>kg/(m²·s) and Pa; no flux where the outside is not below.</returns>
    public static (double Flux, double Throat) Of(INozzleWay way, double stagnation, double ambient, NozzleModel model)
    {
        if (!(stagnation > ambient)) return (0, stagnation);
        if (model == NozzleModel.Frozen) return Greatest(way, stagnation, ambient, 0);
        if (model == NozzleModel.Equilibrium) return Greatest(way, stagnation, ambient, 1);
        // The critical ratio is that of the choked equilibrium, even where the outside is above it.
        var (_, throat) = Greatest(way, stagnation, Math.Min(ambient, 0.02 * stagnation), 1);
        return Greatest(way, stagnation, ambient, way.Part(throat / stagnation));
    }

    static (double Flux, double Throat) Greatest(INozzleWay way, double stagnation, double ambient, double part)
    {
        var (low, high) = (Math.Log(ambient), Math.Log(stagnation));
        var (left, right) = (high - Golden * (high - low), low + Golden * (high - low));
        var (atLeft, atRight) = (Flux(way, left, part), Flux(way, right, part));
        for (var i = 0; i < MostSteps; i++)
        {
            if (atLeft >= atRight)
            {
                (high, right, atRight) = (right, left, atLeft);
                left = high - Golden * (high - low);
                atLeft = Flux(way, left, part);
            }
            else
            {
                (low, left, atLeft) = (left, right, atRight);
                right = low + Golden * (high - low);
                atRight = Flux(way, right, part);
            }
        }
        var atAmbient = Flux(way, Math.Log(ambient), part);
        var middle = 0.5 * (low + high);
        var atMiddle = Flux(way, middle, part);
        return atAmbient >= atMiddle ? (atAmbient, ambient) : (atMiddle, Math.Exp(middle));
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
