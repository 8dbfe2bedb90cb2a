using CsCheck;
using FlowCalc.Agents;
using FlowCalc.Coverage;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Tests.ClosedForms.Coverage;

namespace FlowCalc.Tests.Properties.Coverage;

/// <summary>What holds of every spray and every space.</summary>
public class CoverageLawTests
{
    static readonly string[] Flooded = [.. AgentCatalogue.Expanding.Select(agent => agent.Id)];

    static readonly Gen<double> Angle = Gen.Double[1, 170], Tilt = Gen.Double[0, 130], Height = Gen.Double[0.01, 3];

    [Fact]
    public void An_ellipse_grows_with_the_square_of_the_distance() =>
        Gen.Select(Angle, Tilt, Height, Gen.Double[0.1, 10]).Sample((angle, tilt, height, factor) =>
        {
            var (near, far) = (Cones.Section(angle, tilt, height: height), Cones.Section(angle, tilt, height: height * factor));
            if (near?.Ellipse is not { } one) return far?.Ellipse is null;
            return Math.Abs(far!.Ellipse!.Area / one.Area / (factor * factor) - 1) < 1e-9;
        }, iter: 2_000);

    [Fact]
    public void Turning_and_moving_everything_changes_nothing() =>
        Gen.Select(Cones3, Rotation, Gen.Double[-5, 5]).Sample((cones, turn, shift) =>
        {
            Direction Moved(Direction place) => turn(place) + new Direction(shift, -2 * shift, 0.5 * shift);
            (double X, double Y)[] corners = [(-0.5, -0.4), (0.8, -0.3), (0.4, 0.1), (0.5, 0.6), (-0.3, 0.4)];
            var here = Cones.Plane(corners);
            var there = new SurfacePlane([.. corners.Select(corner => Moved(new(corner.X, corner.Y, 0))).Select(place => Cones.Place(place.X, place.Y, place.Z))]);

            var one = SurfaceStrips.Measure(here, [.. cones], CancellationToken.None);
            var other = SurfaceStrips.Measure(there, [.. cones.Select(cone => cone with { Tip = Moved(cone.Tip), Axis = turn(cone.Axis) })], CancellationToken.None);

            return one.Single.Zip(other.Single).All(pair => Near(pair.First, pair.Second)) && Near(one.Once, other.Once) && Near(one.Twice, other.Twice);
        }, iter: 300);

    [Fact]
    public void The_order_of_nozzles_does_not_matter() =>
        Cones3.Sample(cones =>
        {
            var plane = Cones.Plane((-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5));

            var one = SurfaceStrips.Measure(plane, [.. cones], CancellationToken.None);
            var other = SurfaceStrips.Measure(plane, [.. cones.Reverse()], CancellationToken.None);

            return one.Single.Reverse().Zip(other.Single).All(pair => Near(pair.First, pair.Second)) && Near(one.Once, other.Once) && Near(one.Twice, other.Twice);
        }, iter: 300);

    [Fact]
    public void Covered_twice_is_within_covered_once_and_no_more_than_the_face() =>
        Cones3.Sample(cones =>
        {
            var plane = Cones.Plane((-0.5, -0.5), (0.5, -0.5), (0.5, 0.5), (-0.5, 0.5));
            var (single, once, twice) = SurfaceStrips.Measure(plane, [.. cones], CancellationToken.None);
            const double slack = 1e-9;

            return twice <= once + slack && once <= plane.Area + slack && single.All(area => area <= once + slack) && once + twice <= single.Sum() + slack;
        }, iter: 500);

    [Fact]
    public void A_place_in_the_slice_of_a_line_is_in_the_cone_and_one_outside_is_not() =>
        Gen.Select(Cones3, Rotation, Gen.Double[-1, 1], Gen.Double[-3, 3]).Sample((cones, turn, offset, at) =>
        {
            var (start, along) = (new Direction(offset, 0.2, 0), turn(new(1, 0, 0)));
            var place = start + at * along;
            return cones.All(cone =>
            {
                var isInSlice = cone.Slice(start, along) is { } slice && at >= slice.From && at <= slice.To;
                return Math.Abs(cone.AngleTo(place) - cone.HalfAngle) < 1e-6 || isInSlice == cone.Holds(place);
            });
        }, iter: 3_000);

    [Fact]
    public void Mass_and_concentration_lead_back_to_each_other() =>
        Gen.Select(Gen.Int[0, Flooded.Length - 1].Select(at => Flooded[at]), Gen.Double[0.001, 1_000], Gen.Double[0.001, 0.9], Gen.Double[220, 360], Gen.Double[3e4, 1.2e5])
            .Sample((id, volume, concentration, temperature, pressure) =>
            {
                var agent = FloodingAgent.Of(AgentCatalogue.FindExpanding(id)!)!;
                return Math.Abs(agent.Concentration(volume, agent.Mass(volume, concentration, temperature, pressure), temperature, pressure) / concentration - 1) < 1e-9;
            }, iter: 2_000);

    static Gen<SprayCone[]> Cones3 => Gen.Select(Gen.Double[-0.6, 0.6], Gen.Double[-0.6, 0.6], Gen.Double[0.05, 1], Gen.Double[0, 2.2], Gen.Double[0, 6.28], Gen.Double[0.02, 1.4])
        .Select((x, y, z, tilt, round, half) => new SprayCone(new(x, y, z), new(Math.Sin(tilt) * Math.Cos(round), Math.Sin(tilt) * Math.Sin(round), -Math.Cos(tilt)), half)).Array[3];

    // Round z, then x, then z again.
    static Gen<Func<Direction, Direction>> Rotation => Gen.Select(Gen.Double[0, 6.28], Gen.Double[0, 3.14], Gen.Double[0, 6.28])
        .Select((a, b, c) => new Func<Direction, Direction>(place => AboutZ(AboutX(AboutZ(place, a), b), c)));

    static Direction AboutZ(Direction place, double angle) => new(place.X * Math.Cos(angle) - place.Y * Math.Sin(angle), place.X * Math.Sin(angle) + place.Y * Math.Cos(angle), place.Z);

    static Direction AboutX(Direction place, double angle) => new(place.X, place.Y * Math.Cos(angle) - place.Z * Math.Sin(angle), place.Y * Math.Sin(angle) + place.Z * Math.Cos(angle));

    static bool Near(double one, double other) => Math.Abs(one - other) < 1e-7;
}
