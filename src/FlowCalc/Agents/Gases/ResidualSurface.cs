namespace FlowCalc.Agents;

/// <summary>αʳ(δ, τ) as bicubic pieces that have its values, slopes and mixed slopes at the corners: one surface, so that pressure and heat capacity agree with each other.</summary>
internal sealed class ResidualSurface
{
    const int DensityPieces = 128;
    const int TemperaturePieces = 128;

    readonly double temperatureStart, densityStep, temperatureStep;

    // Of each node: value, slope by δ, slope by τ, mixed slope; slopes times the steps.
    readonly double[] nodes = new double[4 * (DensityPieces + 1) * (TemperaturePieces + 1)];

    /// <summary>Builds the surface.</summary>
    /// <param name="equation">The equation.</param>
    /// <param name="highestDensity">Highest δ.</param>
    /// <param name="lowestTemperature">Lowest τ.</param>
    /// <param name="highestTemperature">Highest τ.</param>
    public ResidualSurface(HelmholtzEquation equation, double highestDensity, double lowestTemperature, double highestTemperature)
    {
        temperatureStart = lowestTemperature;
        densityStep = highestDensity / DensityPieces;
        temperatureStep = (highestTemperature - lowestTemperature) / TemperaturePieces;
        for (var i = 0; i <= DensityPieces; i++)
            for (var j = 0; j <= TemperaturePieces; j++)
            {
                // At rest αʳ is 0 and its slope the second virial coefficient; a hair over 0 gives both.
                var at = equation.Residual(Math.Max(i * densityStep, 1e-9), lowestTemperature + j * temperatureStep);
                var node = nodes.AsSpan(Node(i, j), 4);
                (node[0], node[1]) = (at.Value, at.ByDensity * densityStep);
                (node[2], node[3]) = (at.ByTemperature * temperatureStep, at.ByBoth * densityStep * temperatureStep);
            }
    }

    /// <summary>∂αʳ/∂δ, ∂²αʳ/∂δ∂τ and ∂²αʳ/∂τ².</summary>
    /// <param name="density">δ, from 0 to the highest; beyond, the outermost piece goes on.</param>
    /// <param name="temperature">τ, within its range; beyond, the outermost piece goes on.</param>
    public (double ByDensity, double ByBoth, double ByTemperatureTwice) At(double density, double temperature)
    {
        var (x, y) = (density / densityStep, (temperature - temperatureStart) / temperatureStep);
        var (i, j) = ((int)Math.Clamp(x, 0, DensityPieces - 1), (int)Math.Clamp(y, 0, TemperaturePieces - 1));
        var (u, v) = (x - i, y - j);
        ReadOnlySpan<double> a = nodes.AsSpan(Node(i, j), 8), b = nodes.AsSpan(Node(i + 1, j), 8);
        var (value, slope) = (new Hermite(u), new HermiteSlope(u));
        // Along δ first: the value and its slope at both ends of the piece in τ, each with its slope by τ.
        var low = (Value: value.Of(a[0], a[1], b[0], b[1]), Slope: value.Of(a[2], a[3], b[2], b[3]));
        var high = (Value: value.Of(a[4], a[5], b[4], b[5]), Slope: value.Of(a[6], a[7], b[6], b[7]));
        var lowD = (Value: slope.Of(a[0], a[1], b[0], b[1]), Slope: slope.Of(a[2], a[3], b[2], b[3]));
        var highD = (Value: slope.Of(a[4], a[5], b[4], b[5]), Slope: slope.Of(a[6], a[7], b[6], b[7]));
        return (
            new Hermite(v).Of(lowD.Value, lowD.Slope, highD.Value, highD.Slope) / densityStep,
            new HermiteSlope(v).Of(lowD.Value, lowD.Slope, highD.Value, highD.Slope) / (densityStep * temperatureStep),
            Curvature(v, low.Value, low.Slope, high.Value, high.Slope) / (temperatureStep * temperatureStep));
    }

    static int Node(int density, int temperature) => 4 * (density * (TemperaturePieces + 1) + temperature);

    static double Curvature(double v, double start, double startSlope, double end, double endSlope) =>
        (12 * v - 6) * (start - end) + (6 * v - 4) * startSlope + (6 * v - 2) * endSlope;

    readonly struct Hermite(double u)
    {
        readonly double end = u * u * (3 - 2 * u), startSlope = u * (1 - u) * (1 - u), endSlope = u * u * (u - 1);

        public double Of(double start, double slopeThere, double last, double slopeAtLast) => start + end * (last - start) + startSlope * slopeThere + endSlope * slopeAtLast;
    }

    readonly struct HermiteSlope(double u)
    {
        readonly double rise = 6 * u * (1 - u), startSlope = (1 - u) * (1 - 3 * u), endSlope = u * (3 * u - 2);

        public double Of(double start, double slopeThere, double last, double slopeAtLast) => rise * (last - start) + startSlope * slopeThere + endSlope * slopeAtLast;
    }
}
