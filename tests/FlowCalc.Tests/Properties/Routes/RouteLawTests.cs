using CsCheck;
using FlowCalc.Routes;
using FlowCalc.Tests.Routes;

namespace FlowCalc.Tests.Properties.Routes;

/// <summary>Laws of the geometry of a cut list, over random ways in space.</summary>
public class RouteLawTests
{
    const double Radius = 0.03, Micrometre = 1e-6, Degree = 1e-4;

    // Steps of decimetres to half a metre along no axis in particular; turns near half a circle are left out, as a tube has none.
    static readonly Gen<double[][]> Ways =
        Gen.Select(Gen.Double[0.2, 0.6], Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (length, x, y, z) => (length, x, y, z)).Array[2, 6]
            .Select(steps =>
            {
                List<double[]> places = [[0, 0, 0]];
                foreach (var (length, x, y, z) in steps)
                {
                    var scale = length / Math.Max(0.1, Math.Sqrt(x * x + y * y + z * z));
                    places.Add([places[^1][0] + x * scale, places[^1][1] + y * scale, places[^1][2] + z * scale]);
                }
                return places.ToArray();
            })
            .Where(IsSound);

    static TubePiece Piece(double[][] way) => RouteDocument.Piece(RouteDocument.Through(way, Radius, ", \"insertion\": \"15 mm\""));

    [Fact]
    public void Cut_length_is_straights_and_arcs_and_legs_less_gains_and_insertions() => Ways.Sample(way =>
    {
        var piece = Piece(way);

        var legs = Enumerable.Range(1, way.Length - 1).Sum(place => Distance(way[place - 1], way[place]));
        return Near(piece.Exact.Meters, piece.Straights.Sum(straight => straight.Meters) + piece.Bends.Sum(bend => bend.Arc.Meters))
            && Near(piece.Exact.Meters, legs - piece.Bends.Sum(bend => bend.Gain.Meters) + 2 * 0.015);
    }, iter: 100);

    [Fact]
    public void Marks_follow_from_straights_and_arcs_before_them() => Ways.Sample(way =>
    {
        var piece = Piece(way);

        var at = 0.0;
        for (var bend = 0; bend < piece.Bends.Length; bend++)
        {
            at += piece.Straights[bend].Meters;
            if (!Near(piece.Bends[bend].At.Meters, at)) return false;
            at += piece.Bends[bend].Arc.Meters;
        }
        return true;
    }, iter: 100);

    [Fact]
    public void Turned_and_shifted_axes_change_nothing() => Gen.Select(Ways, Gen.Double[0, 6], Gen.Double[0, 6], Gen.Double[-3, 3]).Sample((way, yaw, pitch, shift) =>
        AreAlike(Piece(way), Piece([.. way.Select(place => Turned(place, yaw, pitch, shift))]), sign: 1), iter: 100);

    [Fact]
    public void Mirrored_way_turns_the_other_way_round() => Ways.Sample(way =>
        AreAlike(Piece(way), Piece([.. way.Select(place => new[] { -place[0], place[1], place[2] })]), sign: -1), iter: 100);

    // From the other end a rotation keeps its sign: travel and both planes turn over.
    [Fact]
    public void Way_from_the_other_end_has_the_same_length_and_the_bends_in_reverse() => Ways.Sample(way =>
    {
        var (there, back) = (Piece(way), Piece([.. way.Reverse()]));

        var count = there.Bends.Length;
        if (!Near(there.Exact.Meters, back.Exact.Meters) || count != back.Bends.Length) return false;
        for (var bend = 0; bend < count; bend++)
        {
            var (one, other) = (there.Bends[bend], back.Bends[count - 1 - bend]);
            if (!Near(one.At.Meters + one.Arc.Meters + other.At.Meters, there.Exact.Meters)) return false;
            if (bend > 0 && !SameTurn(one.Rotation!.Value.Degrees, back.Bends[count - bend].Rotation!.Value.Degrees)) return false;
        }
        return true;
    }, iter: 100);

    [Fact]
    public void Bends_in_one_plane_have_a_rotation_of_nothing_or_of_half_a_turn() =>
        Gen.Select(Gen.Double[20, 150], Gen.Double[20, 150], Gen.Bool, Gen.Double[0, 6], Gen.Double[0, 6]).Sample((first, second, isSame, yaw, pitch) =>
        {
            var (a, b) = (first * Math.PI / 180, (isSame ? second : -second) * Math.PI / 180);
            double[][] way = [[0, 0, 0], [0.5, 0, 0], [0.5 + 0.5 * Math.Cos(a), 0.5 * Math.Sin(a), 0], [0, 0, 0]];
            way[3] = [way[2][0] + 0.5 * Math.Cos(a + b), way[2][1] + 0.5 * Math.Sin(a + b), 0];

            var rotation = Piece([.. way.Select(place => Turned(place, yaw, pitch, 0))]).Bends[1].Rotation!.Value.Degrees;

            return Math.Abs(rotation - (isSame ? 0 : 180)) < Degree;
        }, iter: 100);

    static bool AreAlike(TubePiece one, TubePiece other, int sign) =>
        Near(one.Exact.Meters, other.Exact.Meters) && one.Bends.Length == other.Bends.Length
        && one.Bends.Zip(other.Bends).All(pair => Near(pair.First.At.Meters, pair.Second.At.Meters)
            && Math.Abs(pair.First.Angle.Degrees - pair.Second.Angle.Degrees) < Degree
            && (pair.First.Rotation is null ? pair.Second.Rotation is null : SameTurn(sign * pair.First.Rotation.Value.Degrees, pair.Second.Rotation!.Value.Degrees)));

    // +180° and -180° are one turn.
    static bool SameTurn(double one, double other) => Math.Abs(Math.IEEERemainder(one - other, 360)) < Degree;

    static bool Near(double one, double other) => Math.Abs(one - other) < Micrometre;

    static bool IsSound(double[][] way)
    {
        for (var place = 1; place < way.Length; place++)
        {
            if (Distance(way[place - 1], way[place]) < 0.15) return false;
            if (place == way.Length - 1) break;
            var (before, behind) = (Direction(way[place - 1], way[place]), Direction(way[place], way[place + 1]));
            if (before.AngleTo(behind) * 180 / Math.PI is < 1 or > 140) return false;
        }
        return true;
    }

    static Direction Direction(double[] from, double[] to) => new(to[0] - from[0], to[1] - from[1], to[2] - from[2]);

    static double Distance(double[] from, double[] to) => Direction(from, to).Length;

    static double[] Turned(double[] place, double yaw, double pitch, double shift)
    {
        var (x, y, z) = (place[0] * Math.Cos(yaw) - place[1] * Math.Sin(yaw), place[0] * Math.Sin(yaw) + place[1] * Math.Cos(yaw), place[2]);
        return [x * Math.Cos(pitch) - z * Math.Sin(pitch) + shift, y - shift, x * Math.Sin(pitch) + z * Math.Cos(pitch) + 2 * shift];
    }
}
