namespace FlowCalc.Networks;

/// <summary>A fluid whose density falls along the way, seen by the logarithm u of the absolute pressure in Pa.</summary>
internal interface ICompressiblePath
{
    /// <summary>Reference density ρ0 of the potential, kg/m³, over 0.</summary>
    double ReferenceDensity { get; }

    /// <summary>Highest u that the path holds.</summary>
    double LogTop { get; }

    /// <summary>Lowest u that the path holds, below that of the surroundings.</summary>
    double LogLow { get; }

    /// <summary>u outside the nozzles, where the potential is 0.</summary>
    double LogAmbient { get; }

    /// <summary>
    /// Whether a point holds total pressure, so that the fluid speeds up as it enters a run and slows down as it leaves it; false where points and
    /// ends of runs are told in one pressure.
    /// </summary>
    bool HasHeads { get; }

    /// <summary>State on the path.</summary>
    /// <param name="log">u.</param>
    PathPoint At(double log);

    /// <summary>u of a potential.</summary>
    /// <param name="potential">Ψ, Pa.</param>
    /// <param name="guess">u nearby.</param>
    double LogOf(double potential, double guess);

    /// <summary>u at which a mass flux is the greatest that the path can pass, its local choking flux; the lowest u where it is below all.</summary>
    /// <param name="flux">Mass flux, kg/(m²·s), 0 or more.</param>
    double ChokingLog(double flux);

    /// <summary>Mass flux out of a nozzle of discharge coefficient 1, kg/(m²·s), and its slope by u.</summary>
    /// <param name="log">u before the nozzle, over that of the surroundings.</param>
    (double Flux, double Slope) Nozzle(double log);

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="log">u.</param>
    double Viscosity(double log);
}
