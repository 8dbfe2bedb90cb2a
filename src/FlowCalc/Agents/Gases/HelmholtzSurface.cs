using System.Runtime.CompilerServices;
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

    /// <summary>The six derivatives that properties need and ∂³α/∂δ²∂τ, ln δ left out.</summary>
    /// <param name="density">δ, from 0 to the highest; beyond, the outermost piece goes on.</param>
    /// <param name="temperature">τ, within its range; beyond, the outermost piece goes on.</param>
    public HelmholtzDerivatives All(double density, double temperature)
    {
        var (x, y) = (density * densityScale, (temperature - temperatureStart) * temperatureScale);
        var (i, j) = ((int)Math.Clamp(x, 0, densityPieces - 1), (int)Math.Clamp(y, 0, temperaturePieces - 1));
        var (u, v) = (x - i, y - j);
        ReadOnlySpan<Vector256<double>> left = nodes.AsSpan(Node(i, j), 6), right = nodes.AsSpan(Node(i + 1, j), 6);
        var (rise, riseHigh) = (right[0] - left[0], right[3] - left[3]);
        var (across, acrossSlope, acrossBend) = (Values(u), Slopes(u), Curvatures(u));
        var (low, high) = (left[0] + Across(across, left[1], left[2], right[1], right[2], rise), left[3] + Across(across, left[4], left[5], right[4], right[5], riseHigh));
        var (lowSlope, highSlope) = (Across(acrossSlope, left[1], left[2], right[1], right[2], rise), Across(acrossSlope, left[4], left[5], right[4], right[5], riseHigh));
        var (lowBend, highBend) = (Across(acrossBend, left[1], left[2], right[1], right[2], rise), Across(acrossBend, left[4], left[5], right[4], right[5], riseHigh));
        // The weights of both sides in τ, for values, slopes and curvatures: products of four lanes are summed at the end.
        var along = Vector256.Create(v);
        var (square, cube) = (along * along, along * along * along);
        // Of Hermite's polynomials the factors of each power: of value, slope and curvature at the start, then at the end, which has no lower powers.
        var linear = Vector256.Create(0.0, 1, 0, 0);
        var fromLow = Vector256.FusedMultiplyAdd(
            cube, Polynomial(along, Vector256.Create(-10, -6, -1.5, 0), Vector256.Create(15, 8, 1.5, 0), Vector256.Create(-6, -3, -0.5, 0)),
            Polynomial(along, Vector256.Create(1.0, 0, 0, 0), linear, Vector256.Create(0, 0, 0.5, 0)));
        var fromHigh = cube * Polynomial(along, Vector256.Create(10, -4, 0.5, 0), Vector256.Create(-15.0, 7, -1, 0), Vector256.Create(6, -3, 0.5, 0));
        var slopeFromLow = Vector256.FusedMultiplyAdd(
            square, Polynomial(along, Vector256.Create(-30, -18, -4.5, 0), Vector256.Create(60.0, 32, 6, 0), Vector256.Create(-30, -15, -2.5, 0)),
            Vector256.FusedMultiplyAdd(along, Vector256.Create(0.0, 0, 1, 0), linear));
        var slopeFromHigh = square * Polynomial(along, Vector256.Create(30, -12, 1.5, 0), Vector256.Create(-60.0, 28, -4, 0), Vector256.Create(30, -15, 2.5, 0));
        var bendFromLow = Vector256.FusedMultiplyAdd(
            along, Polynomial(along, Vector256.Create(-60.0, -36, -9, 0), Vector256.Create(180.0, 96, 18, 0), Vector256.Create(-120.0, -60, -10, 0)), Vector256.Create(0.0, 0, 1, 0));
        var bendFromHigh = along * Polynomial(along, Vector256.Create(60.0, -24, 3, 0), Vector256.Create(-180.0, 84, -12, 0), Vector256.Create(120.0, -60, 10, 0));
        return new(
            Vector256.Sum(low * fromLow + high * fromHigh),
            densityScale * Vector256.Sum(lowSlope * fromLow + highSlope * fromHigh),
            densityScale * densityScale * Vector256.Sum(lowBend * fromLow + highBend * fromHigh),
            temperatureScale * Vector256.Sum(low * slopeFromLow + high * slopeFromHigh),
            densityScale * temperatureScale * Vector256.Sum(lowSlope * slopeFromLow + highSlope * slopeFromHigh),
            densityScale * densityScale * temperatureScale * Vector256.Sum(lowBend * slopeFromLow + highBend * slopeFromHigh),
            temperatureScale * temperatureScale * Vector256.Sum(low * bendFromLow + high * bendFromHigh), 0, 0);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Vector256<double> Polynomial(Vector256<double> x, Vector256<double> rest, Vector256<double> linear, Vector256<double> square) =>
        Vector256.FusedMultiplyAdd(x, Vector256.FusedMultiplyAdd(x, square, linear), rest);

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static Vector256<double> Across(
        (double Rise, double Slope, double Bend, double EndSlope, double EndBend) basis,
        Vector256<double> slope, Vector256<double> bend, Vector256<double> endSlope, Vector256<double> endBend, Vector256<double> rise) =>
            Vector256.FusedMultiplyAdd(Vector256.Create(basis.Rise), rise, Vector256.Create(basis.Slope) * slope)
            + Vector256.FusedMultiplyAdd(Vector256.Create(basis.Bend), bend, Vector256.FusedMultiplyAdd(Vector256.Create(basis.EndSlope), endSlope, Vector256.Create(basis.EndBend) * endBend));

    int Node(int density, int temperature) => 3 * (density * (temperaturePieces + 1) + temperature);

    static double Along((double Rise, double Slope, double Bend, double EndSlope, double EndBend) basis, Vector256<double> low, Vector256<double> high, double start) =>
        start + basis.Rise * (high[0] - low[0]) + basis.Slope * low[1] + basis.Bend * low[2] + basis.EndSlope * high[1] + basis.EndBend * high[2];

    // The six polynomials of Hermite's fifth degree on 0 to 1; that of the start is 1 less that of the end.
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static (double Rise, double Slope, double Bend, double EndSlope, double EndBend) Values(double u)
    {
        var (cube, rest) = (u * u * u, 1 - u);
        var restCube = rest * rest * rest;
        return (cube * (10 + u * (6 * u - 15)), u * restCube * (1 + 3 * u), 0.5 * u * u * restCube, cube * rest * (3 * u - 4), 0.5 * cube * rest * rest);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static (double Rise, double Slope, double Bend, double EndSlope, double EndBend) Slopes(double u)
    {
        var rest = 1 - u;
        var (square, restSquare) = (u * u, rest * rest);
        return (30 * square * restSquare, restSquare * (1 + 2 * u - 15 * square), 0.5 * u * restSquare * (2 - 5 * u), square * (u * (28 - 15 * u) - 12), 0.5 * square * rest * (3 - 5 * u));
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    static (double Rise, double Slope, double Bend, double EndSlope, double EndBend) Curvatures(double u)
    {
        var rest = 1 - u;
        return (60 * u * rest * (1 - 2 * u), -12 * u * rest * (3 - 5 * u), rest * (1 + u * (10 * u - 8)), 12 * u * rest * (5 * u - 2), u * (3 + u * (10 * u - 12)));
    }
}
