using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>A compressible path as the sweeps see it: points in potentials, nozzles by their flux.</summary>
/// <typeparam name="TPath">Kind of fluid.</typeparam>
/// <param name="path">The fluid.</param>
/// <param name="logs">u of every point, as far as it is known.</param>
internal readonly struct CompressiblePath<TPath>(TPath path, double[] logs) : IExpansionPath where TPath : struct, ICompressiblePath
{
    // kg/(s·m²): below, the tangent keeps this flow's slope, since the square law has none at rest.
    const double LeastFlux = 1e-3;

    // A flux at this little over the surroundings' pressure, as a logarithm, stands for the law's slope at rest.
    const double NearRest = 1e-4;

    /// <inheritdoc/>
    public double ReferenceDensity => path.ReferenceDensity;

    /// <inheritdoc/>
    public double Viscosity => path.Viscosity(path.LogTop);

    /// <inheritdoc/>
    public double AmbientPotential => 0;

    /// <inheritdoc/>
    public double Potential(double pressure) => path.At(Math.Log(pressure)).Potential;

    /// <inheritdoc/>
    public double Pressure(double potential) => Math.Exp(path.LogOf(potential, 0.5 * (path.LogLow + path.LogTop)));

    /// <inheritdoc/>
    public double Weight(double potential)
    {
        var density = path.At(path.LogOf(potential, path.LogAmbient)).Density;
        return density * density * HydrostaticRise.StandardGravity / path.ReferenceDensity;
    }

    /// <summary>m|m| = A²·G²(p): a root has no slope near rest, and the square is almost a straight line in the potential, choked or not. Below the surroundings' pressure it is carried on as it is just above.</summary>
    /// <inheritdoc/>
    public NozzleTangent Nozzle(int point, double potential, double flow, double area)
    {
        var (square, slope) = Square(path.LogOf(potential, logs[point]), potential);
        var (g, target) = (area * area * slope, area * area * square);
        if (target <= 0)
        {
            var size = Math.Max(Math.Abs(flow), LeastFlux * area);
            return new(g, 2 * size, g * potential - target + (Math.Abs(flow) - 2 * size) * flow);
        }
        // The tangent of m² far below its place would throw the flow far above it.
        var at = Math.Max(flow, 0.5 * Math.Sqrt(target));
        return new(g, 2 * at, g * potential - target - at * at);
    }

    (double Square, double Slope) Square(double log, double potential)
    {
        if (log > path.LogAmbient + NearRest)
        {
            var (flux, slope) = path.Nozzle(log);
            return (flux * flux, 2 * flux * slope / PotentialSlope(log));
        }
        var near = path.LogAmbient + NearRest;
        var atNear = path.Nozzle(near).Flux;
        var perPotential = atNear * atNear / path.At(near).Potential;
        return (perPotential * potential, perPotential);
    }

    double PotentialSlope(double log) => path.At(log).Density * Math.Exp(log) / path.ReferenceDensity;
}
