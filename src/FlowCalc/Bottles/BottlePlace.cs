using System.Collections.Immutable;
using System.Globalization;

namespace FlowCalc.Bottles;

/// <summary>A bottle as it stands in one attitude: where its liquid lies, where that is drawn from and what stays.</summary>
internal sealed record BottlePlace
{
    const string Pointer = "/supply/bottle";

    // A direction of less than this is none, as the reader has it for an axis.
    const double LeastGravity = 1e-6;

    /// <summary>Where the liquid lies; null with no gravity, when its place is unknown.</summary>
    public required LiquidLevel? Level { get; init; }

    /// <summary>Length of gravity, in g.</summary>
    public required double Gravity { get; init; }

    /// <summary>Height at which liquid is drawn, m; of what draws all of it, the lowest place; 0 with no gravity.</summary>
    public required double InletHeight { get; init; }

    /// <summary>Height of the outlet, the centre of the outlet end, m; 0 with no gravity.</summary>
    public required double OutletHeight { get; init; }

    /// <summary>Liquid that stays when the inlet uncovers, m³, where there is as much; 0 where all is drawn.</summary>
    public required double VolumeBelowInlet { get; init; }

    /// <summary>Whether all liquid is drawn: no outlet described, a pick-up that follows, or no gravity.</summary>
    public required bool DrawsAll { get; init; }

    /// <summary>Inside radius, m, such that radius and length give the stated volume.</summary>
    public required double Radius { get; init; }

    /// <summary>Inside length, m, as given or assumed.</summary>
    public required double Length { get; init; }

    /// <summary>Inside area of the wall with both ends, m².</summary>
    public double WallArea => 2 * Math.PI * Radius * (Radius + Length);

    /// <summary>What was taken for it beside what the document says.</summary>
    public required ImmutableArray<Assumption> Assumptions { get; init; }

    /// <summary>The bottle in one attitude.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="gravity">Gravity less the acceleration of the frame in the layout's axes, in g; may be zero.</param>
    /// <remarks>
    /// The inlet is where the dip tube's <c>inlet</c> says; else on the axis, as far from the outlet end as the tube is long and at the base at the lowest;
    /// without a dip tube, the outlet itself, so that a bottle standing upright gives its gas first.
    /// </remarks>
    public static BottlePlace Of(Bottle bottle, Direction gravity)
    {
        var dip = bottle.Outlet?.DipTube;
        var cylinder = BottleCylinder.Of(bottle.Volume.CubicMeters, bottle.Shape, dip?.Length.Meters ?? 0);
        var assumptions = ImmutableArray.CreateBuilder<Assumption>();
        if (cylinder.Assumption is { } shape) assumptions.Add(shape);
        var strength = gravity.Length;
        if (!(strength > LeastGravity))
        {
            assumptions.Add(new(Pointer, "without gravity the place of the liquid is unknown; all of it is drawn before the gas", "nothing better is known"));
            return new()
            {
                Level = null,
                Gravity = 0,
                InletHeight = 0,
                OutletHeight = 0,
                VolumeBelowInlet = 0,
                DrawsAll = true,
                Radius = cylinder.Radius,
                Length = cylinder.Length,
                Assumptions = assumptions.DrainToImmutable(),
            };
        }

        var axes = BottleAxes.Along(new(bottle.Axis[0], bottle.Axis[1], bottle.Axis[2]));
        var down = axes.FromLayout(gravity);
        var level = new LiquidLevel(cylinder.Radius, cylinder.Length, new(-down.X / strength, -down.Y / strength, -down.Z / strength));
        var drawsAll = bottle.Outlet is null || dip?.Follows is true;
        if (!drawsAll && dip is { Inlet: [var x, var y, _] } && (x.Meters != 0 || y.Meters != 0) && !axes.AreTheLayouts)
            assumptions.Add(new(Pointer + "/outlet/dipTube/inlet", Turned(axes), "the smallest rotation that takes the layout's z to the bottle's axis"));
        var inlet = drawsAll ? level.Lowest : InletOf(level, dip, cylinder.Length);
        return new()
        {
            Level = level,
            Gravity = strength,
            InletHeight = inlet,
            OutletHeight = level.HeightAt(0, 0, cylinder.Length),
            VolumeBelowInlet = level.VolumeBelow(inlet),
            DrawsAll = drawsAll,
            Radius = cylinder.Radius,
            Length = cylinder.Length,
            Assumptions = assumptions.DrainToImmutable(),
        };
    }

    static double InletOf(LiquidLevel level, DipTube? dip, double length) => dip switch
    {
        null => level.HeightAt(0, 0, length),
        { Inlet: [var x, var y, var z] } => level.HeightAt(x.Meters, y.Meters, z.Meters),
        _ => level.HeightAt(0, 0, Math.Max(0, length - dip.Length.Meters)),
    };

    static string Turned(BottleAxes axes) => $"the bottle's x points to {Words(axes.X)} and its y to {Words(axes.Y)} in the layout's axes";

    static string Words(Direction direction) => string.Create(CultureInfo.InvariantCulture, $"[{Rounded(direction.X)}, {Rounded(direction.Y)}, {Rounded(direction.Z)}]");

    // Adding 0 takes the sign off a zero.
    static double Rounded(double part) => Math.Round(part, 3) + 0.0;
}
