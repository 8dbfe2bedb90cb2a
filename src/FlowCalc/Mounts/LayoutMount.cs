using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Mounts;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>Works out whether the bottle of a layout stays where it is bolted.</summary>
public static class LayoutMount
{
    /// <summary>Works a mount out.</summary>
    /// <param name="layout">A layout with a mount and a bottle.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>Loads and uses of every bolt, plate, strap and end of the bottle. The same layout gives the same result, to the last bit.</returns>
    /// <exception cref="ArgumentException">The layout has no mount, or no bottle, or no mass of the bottle.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static MountResult Solve(Layout layout, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout is not { Mount: { } mount, Supply: BottleSupply { Bottle: var bottle } }) throw new ArgumentException("The layout has no mount, or no bottle.", nameof(layout));
        if (mount.FullMass is null && bottle.EmptyMass is null) throw new ArgumentException("The mass of the bottle is not known.", nameof(layout));

        List<Assumption> assumptions = [];
        var frame = MountFrame.Of(mount.Normal, mount.X);
        var (masses, along) = MassBooks.Of(layout, mount, bottle, frame, assumptions);
        var groups = Groups(mount, masses);
        var hold = new BottleHold(mount, masses.Bottle.Kilograms, MassBooks.Axis(bottle, frame), along);
        MountAssumptions.Add(mount, bottle, assumptions);
        var loads = mount.Loads.IsEmpty ? DefaultLoads.For(layout.Application) : [.. mount.Loads.Select(load => (load, "stated in the document"))];
        if (mount.Loads.IsEmpty) assumptions.AddRange(loads.Select(load => new Assumption("/mount/loads", load.Load.Name, load.Source)));

        MountCheck[] checks = [.. groups.SelectMany(group => group.Checks), .. hold.Checks];
        var worst = new CheckResult?[checks.Length];
        var cases = ImmutableArray.CreateBuilder<MountCase>();
        foreach (var (name, acceleration, direction, source) in MountSums.Cases(loads))
        {
            CheckResult[] results = [.. checks.Select(check => MountSums.Result(check, cases.Count, acceleration, direction, frame, cancellationToken))];
            // A direction of the axes that is as bad as any other is the plainer one to name; the search may pass it by a last digit.
            for (var at = 0; at < checks.Length; at++)
                if (worst[at] is not { } known || results[at].Use > known.Use * (1 + 1e-9)) worst[at] = results[at];
            cases.Add(new(
                name, acceleration, direction, MountSums.ForceOf(masses.Total, acceleration), source,
                [.. groups.SelectMany(group => MountSums.Bolts(group, acceleration, direction, frame, cancellationToken))], MountSums.Governing(results)));
        }
        return new MountResult
        {
            Masses = masses,
            Cases = cases.ToImmutable(),
            Checks = [.. worst.OfType<CheckResult>()],
            InLine = [.. groups.Where(group => !group.Group.IsWhole).Select(group => group.Input.Part)],
            Hold = mount.Straps is null ? null : Force.FromNewtons(hold.Hold),
            AxialForce = hold.Axial is null ? null : Force.FromNewtons(Most(hold.Axial, loads, frame, cancellationToken)),
            HoldsWithoutStops = hold.Asked is not null && Most(hold.Asked, loads, frame, cancellationToken) <= hold.Hold,
            StrapTensions = Tensions(mount, hold, loads, frame, cancellationToken),
            LooseEnds = [.. hold.Loose],
            Prying = mount.Foot is null ? null : groups[^1].Input.Prying,
            Thrust = MountAssumptions.Thrust(layout, bottle),
            NotAnswered = MountAssumptions.NotAnswered(mount, groups),
            Assumptions = [.. assumptions],
        };
    }

    // The adapter's group is the last where there is one: the bracket, and so its foot, stands on it.
    static ImmutableArray<GroupChecks> Groups(Mount mount, MountMasses masses)
    {
        var centres = masses.Centres.Select(MassBooks.Metres).ToImmutableArray();
        var (spacer, thickness) = (mount.Spacers?.Meters ?? 0, mount.Adapter?.Thickness.Meters ?? 0);
        var panel = mount.Panel;
        var spread = panel?.Spreader?.Width ?? mount.Bolts.Washer ?? mount.Bolts.Size.MeanHead;
        // Around a spreader the sheet is alone; at the hole's edge the spreader would help, which is not counted.
        var structure = new GroupChecks(new GroupInput(
            MountPart.Structure, mount.Bolts, centres, masses.Total.Kilograms, panel is null ? null : (panel.Thickness.Meters, panel.Material), spread.Meters,
            mount.Adapter is null ? mount.Foot : null, spacer));
        if (panel is { Span: { } span, Material.Yield: { } yields })
            structure.AddBending(MountCheckKind.PanelBending, yields.Pascals, _ => PlateBending.ClampedDisc(span.Meters, spread.Meters, panel.Thickness.Meters));
        if (mount.Adapter is not { } adapter) return [structure];

        var lift = new Direction(0, 0, -spacer - thickness);
        var upper = new GroupChecks(new GroupInput(
            MountPart.Adapter, adapter.Bolts, [.. centres.Select(centre => centre + lift)], masses.Total.Kilograms, (thickness, adapter.Material),
            (adapter.Bolts.Washer ?? adapter.Bolts.Size.MeanHead).Meters, mount.Foot, 0));
        if (adapter.Material.Yield is { } strength)
            upper.AddBending(MountCheckKind.AdapterBending, strength.Pascals, bolt => PlateBending.Strip(Nearest(upper, bolt, structure), adapter.Bolts.Size.Head.Meters, thickness));
        return [structure, upper];
    }

    // A bolt of the bracket right above one of the structure bends the plate over its own head at least.
    static double Nearest(GroupChecks upper, int bolt, GroupChecks structure)
    {
        var (x, y) = upper.Group.Places[bolt];
        var nearest = structure.Group.Places.Min(place => Math.Sqrt((place.X - x) * (place.X - x) + (place.Y - y) * (place.Y - y)));
        return Math.Max(nearest, upper.Input.Bolts.Size.Head.Meters / 2);
    }

    static ImmutableArray<Force> Tensions(Mount mount, BottleHold hold, ImmutableArray<(MountLoad Load, string Source)> loads, MountFrame frame, CancellationToken cancellationToken) =>
        [.. hold.Legs.Select((leg, strap) => Force.FromNewtons(Most(leg, loads, frame, cancellationToken) + (mount.Straps!.Value[strap].Pretension?.Newtons ?? 0)))];

    // The most of a measure over all cases.
    static double Most(LoadMeasure measure, ImmutableArray<(MountLoad Load, string Source)> loads, MountFrame frame, CancellationToken cancellationToken)
    {
        var most = 0.0;
        foreach (var (load, _) in loads)
        {
            var factor = MountSums.Factor(load.Acceleration);
            most = Math.Max(most, load.Direction is { } one ? measure.At(factor * frame.FromLayout(one.ToUnit())) : factor * measure.Peak(cancellationToken).Value);
        }
        return most;
    }
}
