using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Mounts;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>Books what hangs on the bolts of a mount and where its centre of mass is.</summary>
static class MassBooks
{
    // kg/mol of nitrogen, argon, air (handbook values, from memory).
    static readonly ImmutableArray<double> MolarMass = [0.0280134, 0.039948, 0.0289652];

    /// <summary>The masses, and how far the centre of the bottle alone lies from its middle along its axis, m, one for each of their centres.</summary>
    public static (MountMasses Masses, ImmutableArray<double> Along) Of(Layout layout, Mount mount, Bottle bottle, MountFrame frame, List<Assumption> assumptions)
    {
        var fill = bottle.Fill.Kilograms;
        var (liquid, gas) = Contents(layout.Agent, bottle);
        var cushion = mount.FullMass is null ? gas : 0;
        var full = mount.FullMass?.Kilograms ?? bottle.EmptyMass!.Value.Kilograms + fill + cushion;
        ImmutableArray<double> along = [0];
        ImmutableArray<Direction> centres;
        if (mount.CentreOfMass is { } stated) centres = [Metres(stated)];
        else
        {
            var reach = (1 - liquid) * Length(bottle) / 2 * fill / full;
            if (reach > 0)
            {
                along = [-reach, reach];
                assumptions.Add(new("/mount/bottleAt", "the bottle without its agent has its centre of mass in its middle; the liquid lies at whichever end is worse", "the document gives no centreOfMass"));
            }
            else assumptions.Add(new("/mount/bottleAt", "the full bottle has its centre of mass in its middle", "the document gives no centreOfMass"));
            var axis = Axis(bottle, frame);
            centres = [.. along.Select(way => Metres(mount.BottleAt!.Value) + way * axis)];
        }
        var added = mount.Masses.Sum(one => one.Mass.Kilograms);
        var moment = mount.Masses.Aggregate(default(Direction), (sum, one) => sum + one.Mass.Kilograms * Metres(one.At));
        var all = centres.Select(centre => 1 / (full + added) * (full * centre + moment));
        return (new MountMasses(Mass.FromKilograms(full), bottle.Fill, Mass.FromKilograms(cushion), Mass.FromKilograms(added), [.. all.Select(PlaceOf)]), along);
    }

    /// <summary>The bottle's axis in the mount's axes, of length 1.</summary>
    public static Direction Axis(Bottle bottle, MountFrame frame) => frame.FromLayout(new(bottle.Axis[0], bottle.Axis[1], bottle.Axis[2])).ToUnit();

    /// <summary>A place in metres.</summary>
    public static Direction Metres(Place place) => new(place.X.Meters, place.Y.Meters, place.Z.Meters);

    static Place PlaceOf(Direction metres) => new(UnitsNet.Length.FromMeters(metres.X), UnitsNet.Length.FromMeters(metres.Y), UnitsNet.Length.FromMeters(metres.Z));

    static double Length(Bottle bottle) => BottleCylinder.Of(bottle.Volume.CubicMeters, bottle.Shape, 0).Length;

    // Part of the volume that is liquid, 1 where nothing can move; and the mass of gas besides the fill.
    static (double Liquid, double Gas) Contents(Agent agent, Bottle bottle)
    {
        var (volume, charge) = (bottle.Volume.CubicMeters, bottle.ChargeTemperature.Kelvins);
        if (agent is ExpandingAgent expanding)
        {
            var contents = ExpandingContents.Of(bottle, expanding, charge);
            return (contents.LiquidPart is > 0 and < 1 ? contents.LiquidPart : 1, double.IsFinite(contents.Nitrogen) ? contents.Nitrogen : 0);
        }
        var part = Math.Clamp(bottle.Fill.Kilograms / ((LiquidAgent)agent).Density(charge) / volume, 0, 1);
        // The ideal gas: within 2 % of a mass that is a hundredth of the bottle's.
        return (part, bottle.ChargePressure.Pascals * volume * (1 - part) * MolarMass[(int)bottle.CushionGas] / (NitrogenEquilibrium.MolarGasConstant * charge));
    }
}
