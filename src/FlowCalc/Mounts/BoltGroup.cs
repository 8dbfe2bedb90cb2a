using System.Collections.Immutable;
using MathNet.Numerics.LinearAlgebra;

namespace FlowCalc.Mounts;

/// <summary>Equal bolts in one plane under a rigid plate: what each bears of a force.</summary>
/// <remarks>
/// <para>
/// Each bolt gives a pull along z and a shear along x and y. Six equations of equilibrium hold; of all loads that meet them those with the least sum of squares are the elastic
/// ones of equal bolts, as strain energy is least (Castigliano): the pseudo-inverse of the matrix of equilibrium. For the pull that is the linear law about the centroid,
/// t = Fz/n + B·x + C·y, for the shear F/n and Mz·r/J about the centroid. No credit is given to preload or to friction; a negative pull presses on the plate.
/// </para>
/// <para>
/// Source: elastic method for groups of fasteners, as NASA RP-1228 (1990) has it (seen second-hand). Vectors and matrices are those of Math.NET Numerics, in double
/// precision; System.Numerics has them in single precision, and Math.NET Spatial has had no release for years.
/// </para>
/// </remarks>
public sealed class BoltGroup
{
    // Below this part of the largest singular value an equation is none: bolts in one line cannot take the moment along it.
    const double LeastPart = 1e-9;

    readonly Matrix<double>? inverse;

    /// <summary>A group of bolts.</summary>
    /// <param name="places">Places of the bolts in their plane, m; 1 or more.</param>
    /// <exception cref="ArgumentException">There is no bolt.</exception>
    public BoltGroup(ImmutableArray<(double X, double Y)> places)
    {
        if (places.IsDefaultOrEmpty) throw new ArgumentException("A group has one bolt or more.", nameof(places));
        Places = places;
        // Moments over the group's own size, so that the rank does not hang on the unit of length.
        var size = Math.Max(1e-6, places.Max(place => Math.Sqrt(place.X * place.X + place.Y * place.Y)));
        var equilibrium = Matrix<double>.Build.Dense(6, 3 * places.Length);
        for (var bolt = 0; bolt < places.Length; bolt++)
        {
            var (x, y) = places[bolt];
            var at = 3 * bolt;
            (equilibrium[0, at], equilibrium[1, at + 1], equilibrium[2, at + 2]) = (1, 1, 1);
            (equilibrium[3, at + 2], equilibrium[4, at + 2]) = (y / size, -x / size);
            (equilibrium[5, at], equilibrium[5, at + 1]) = (-y / size, x / size);
        }
        var values = equilibrium.Svd(computeVectors: false).S;
        IsWhole = values.Count == 6 && values[5] > LeastPart * values[0];
        if (!IsWhole) return;
        var scale = Matrix<double>.Build.DenseOfDiagonalArray([1, 1, 1, 1 / size, 1 / size, 1 / size]);
        inverse = equilibrium.PseudoInverse() * scale;
    }

    /// <summary>Places of the bolts, m.</summary>
    public ImmutableArray<(double X, double Y)> Places { get; }

    /// <summary>Whether the bolts can take any force and moment; false where all stand in one line, or there are one or two.</summary>
    public bool IsWhole { get; }

    /// <summary>What each bolt bears of a force through a point, as maps from the force.</summary>
    /// <param name="point">A point of the force's line in the axes of the bolts' plane, z from it to the bottle, m.</param>
    /// <returns>One map a bolt, in the order of the places.</returns>
    /// <exception cref="InvalidOperationException">The bolts cannot take every moment; see <see cref="IsWhole"/>.</exception>
    public ImmutableArray<BoltShare> Shares(Direction point)
    {
        if (inverse is null) throw new InvalidOperationException("The bolts stand in one line and cannot take every moment.");
        // Rows: the force, and its moment r × F about the origin.
        var load = Matrix<double>.Build.DenseOfArray(new double[,]
        {
            { 1, 0, 0 }, { 0, 1, 0 }, { 0, 0, 1 },
            { 0, -point.Z, point.Y }, { point.Z, 0, -point.X }, { -point.Y, point.X, 0 },
        });
        var map = inverse * load;
        var shares = ImmutableArray.CreateBuilder<BoltShare>(Places.Length);
        for (var bolt = 0; bolt < Places.Length; bolt++) shares.Add(new(Row(map, 3 * bolt), Row(map, 3 * bolt + 1), Row(map, 3 * bolt + 2)));
        return shares.MoveToImmutable();
    }

    static Direction Row(Matrix<double> map, int row) => new(map[row, 0], map[row, 1], map[row, 2]);
}
