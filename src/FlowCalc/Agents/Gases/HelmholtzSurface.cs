using System.Runtime.Intrinsics;

namespace FlowCalc.Agents;

/// <summary>
/// α°(τ) + αʳ(δ, τ) as pieces of fifth degree in δ and in τ that have its values, slopes and curvatures at their corners. One surface gives
/// pressure and heat capacity, so that they agree with each other; pressure has no kink, heat capacity no step from piece to piece.
/// </summary>
/// <remarks>Hermite interpolation in both variables: the second derivative by τ errs by the fourth power of the step, the first by δ by the fifth.</remarks>
internal sealed class HelmholtzSurface
{
    /// <summary>Pieces along δ where no number is asked for.</summary>
    public const int DensityPieces = 32;

    /// <summary>Pieces along τ where no number is asked for.</summary>
    public const int TemperaturePieces = 72;

    readonly int densityPieces, temperaturePieces;
    readonly double temperatureStart, densityScale, temperatureScale;

    // Of each node three vectors: the function, its slope and its curvature by δ; in each the same by τ and a lane left over; all times the steps.
    readonly Vector256<double>[] nodes;

    /// <summary>Builds the surface.</summary>
    /// <param name="equation">The equation.</param>
    /// <param name="highestDensity">Highest δ.</param>
    /// <param name="lowestTemperature">Lowest τ.</param>
    /// <param name="highestTemperature">Highest τ.</param>
    /// <param name="densityPieces">Pieces along δ.</param>
    /// <param name="temperaturePieces">Pieces along τ.</param>
    public HelmholtzSurface(
        IFluidEquation equation, double highestDensity, double lowestTemperature, double highestTemperature, int densityPieces = DensityPieces, int temperaturePieces = TemperaturePieces)
    {
        (this.densityPieces, this.temperaturePieces, temperatureStart) = (densityPieces, temperaturePieces, lowestTemperature);
        nodes = new Vector256<double>[3 * (densityPieces + 1) * (temperaturePieces + 1)];
        var (density, temperature) = (highestDensity / densityPieces, (highestTemperature - lowestTemperature) / temperaturePieces);
        (densityScale, temperatureScale) = (1 / density, 1 / temperature);
        var scale = Vector256.Create(1, temperature, temperature * temperature, 0);
        for (var j = 0; j <= temperaturePieces; j++)
        {
            var tau = lowestTemperature + j * temperature;
            var ideal = equation.Ideal(tau);
            for (var i = 0; i <= densityPieces; i++)
            {
                // At rest αʳ is 0 and its slopes the virial coefficients; a hair over 0 gives all of them.
                var at = ideal + equation.Residual(Math.Max(i * density, 1e-9), tau);
                var node = nodes.AsSpan(Node(i, j), 3);
                node[0] = scale * Vector256.Create(at.Value, at.ByTemperature, at.ByTemperatureTwice, 0);
                node[1] = scale * density * Vector256.Create(at.ByDensity, at.ByBoth, at.ByDensityAndTemperatureTwice, 0);
                node[2] = scale * (density * density) * Vector256.Create(at.ByDensityTwice, at.ByDensityTwiceAndTemperature, at.ByBothTwice, 0);
            }
        }
    }

    /// <summary>∂α/∂δ, ∂²α/∂δ∂τ and ∂²α/∂τ², ln δ left out.</summary>
    /// <param name="density">δ, from 0 to the highest; beyond, the outermost piece goes on.</param>
    /// <param name="temperature">τ, within its range; beyond, the outermost piece goes on.</param>
    public (double ByDensity, double ByBoth, double ByTemperatureTwice) At(double density, double temperature)
    {
        var (x, y) = (density * densityScale, (temperature - temperatureStart) * temperatureScale);
        var (i, j) = ((int)Math.Clamp(x, 0, densityPieces - 1), (int)Math.Clamp(y, 0, temperaturePieces - 1));
        var (u, v) = (x - i, y - j);
        // Both nodes of a side in τ lie next to each other: low τ, then high τ.
        ReadOnlySpan<Vector256<double>> left = nodes.AsSpan(Node(i, j), 6), right = nodes.AsSpan(Node(i + 1, j), 6);
        var (fall, slope, bend, endSlope, endBend) = Values(u);
        var lowValue = left[0] + fall * (right[0] - left[0]) + slope * left[1] + bend * left[2] + endSlope * right[1] + endBend * right[2];
        var highValue = left[3] + fall * (right[3] - left[3]) + slope * left[4] + bend * left[5] + endSlope * right[4] + endBend * right[5];
        (fall, slope, bend, endSlope, endBend) = Slopes(u);
        var lowSlope = fall * (right[0] - left[0]) + slope * left[1] + bend * left[2] + endSlope * right[1] + endBend * right[2];
        var highSlope = fall * (right[3] - left[3]) + slope * left[4] + bend * left[5] + endSlope * right[4] + endBend * right[5];
        return (
            densityScale * Along(Values(v), lowSlope, highSlope, lowSlope[0]),
            densityScale * temperatureScale * Along(Slopes(v), lowSlope, highSlope, 0),
            temperatureScale * temperatureScale * Along(Curvatures(v), lowValue, highValue, 0));
    }

    /// <summary>The six derivatives that properties need, ln δ left out.</summary>
    /// <param name="density">δ, from 0 to the highest; beyond, the outermost piece goes on.</param>
    /// <param name="temperature">τ, within its range; beyond, the outermost piece goes on.</param>
    public HelmholtzDerivatives All(double density, double temperature)
    {
        var (x, y) = (density * densityScale, (temperature - temperatureStart) * temperatureScale);
        var (i, j) = ((int)Math.Clamp(x, 0, densityPieces - 1), (int)Math.Clamp(y, 0, temperaturePieces - 1));
        var (u, v) = (x - i, y - j);
        ReadOnlySpan<Vector256<double>> left = nodes.AsSpan(Node(i, j), 6), right = nodes.AsSpan(Node(i + 1, j), 6);
        var (low, high) = Across(Values(u), left, right, left[0], left[3]);
        var (lowSlope, highSlope) = Across(Slopes(u), left, right, default, default);
        var (lowBend, highBend) = Across(Curvatures(u), left, right, default, default);
        var (values, slopes) = (Values(v), Slopes(v));
        return new(
            Along(values, low, high, low[0]), densityScale * Along(values, lowSlope, highSlope, lowSlope[0]), densityScale * densityScale * Along(values, lowBend, highBend, lowBend[0]),
            temperatureScale * Along(slopes, low, high, 0), densityScale * temperatureScale * Along(slopes, lowSlope, highSlope, 0), 0,
            temperatureScale * temperatureScale * Along(Curvatures(v), low, high, 0), 0, 0);
    }

    static (Vector256<double> Low, Vector256<double> High) Across(
        (double Rise, double Slope, double Bend, double EndSlope, double EndBend) basis,
        ReadOnlySpan<Vector256<double>> left, ReadOnlySpan<Vector256<double>> right, Vector256<double> low, Vector256<double> high) => (
            low + basis.Rise * (right[0] - left[0]) + basis.Slope * left[1] + basis.Bend * left[2] + basis.EndSlope * right[1] + basis.EndBend * right[2],
            high + basis.Rise * (right[3] - left[3]) + basis.Slope * left[4] + basis.Bend * left[5] + basis.EndSlope * right[4] + basis.EndBend * right[5]);

    int Node(int density, int temperature) => 3 * (density * (temperaturePieces + 1) + temperature);

    static double Along((double Rise, double Slope, double Bend, double EndSlope, double EndBend) basis, Vector256<double> low, Vector256<double> high, double start) =>
        start + basis.Rise * (high[0] - low[0]) + basis.Slope * low[1] + basis.Bend * low[2] + basis.EndSlope * high[1] + basis.EndBend * high[2];

    // The six polynomials of Hermite's fifth degree on 0 to 1; that of the start is 1 less that of the end.
    static (double Rise, double Slope, double Bend, double EndSlope, double EndBend) Values(double u)
    {
        var (cube, rest) = (u * u * u, 1 - u);
        var restCube = rest * rest * rest;
        return (cube * (10 + u * (6 * u - 15)), u * restCube * (1 + 3 * u), 0.5 * u * u * restCube, cube * rest * (3 * u - 4), 0.5 * cube * rest * rest);
    }

    static (double Rise, double Slope, double Bend, double EndSlope, double EndBend) Slopes(double u)
    {
        var rest = 1 - u;
        var (square, restSquare) = (u * u, rest * rest);
        return (30 * square * restSquare, restSquare * (1 + 2 * u - 15 * square), 0.5 * u * restSquare * (2 - 5 * u), square * (u * (28 - 15 * u) - 12), 0.5 * square * rest * (3 - 5 * u));
    }

    static (double Rise, double Slope, double Bend, double EndSlope, double EndBend) Curvatures(double u)
    {
        var rest = 1 - u;
        return (60 * u * rest * (1 - 2 * u), -12 * u * rest * (3 - 5 * u), rest * (1 + u * (10 * u - 8)), 12 * u * rest * (5 * u - 2), u * (3 + u * (10 * u - 12)));
    }
}
