using System.Collections.Immutable;
using FlowCalc.Bottles;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Mounts;

/// <summary>What a mount leaves open: what was taken for it, and what is not answered.</summary>
static class MountAssumptions
{
    const string Practice = "common practice, no source";

    /// <summary>Adds what was taken.</summary>
    public static void Add(Mount mount, Bottle bottle, List<Assumption> assumptions)
    {
        if (bottle.Count > 1) assumptions.Add(new("/mount", $"one of the {bottle.Count} bottles", "each of them has a mount like this"));
        AddBolts("/mount/bolts", mount.Bolts, mount.Panel is not null, assumptions);
        if (mount.Adapter is { } adapter) AddBolts("/mount/adapter/bolts", adapter.Bolts, hasSheet: true, assumptions);
        if (mount.Foot is null) assumptions.Add(new("/mount/foot", "no prying: a bracket that does not bend", "the document gives no foot; a thin foot adds to the pull"));
        if (mount.Panel is { Spreader: null, Span: null }) assumptions.Add(new("/mount/panel/span", "the sheet's bending is left out", "the document gives no span; a thin sheet bends long before a bolt breaks"));
        if (mount.Straps is not { IsEmpty: false } straps) return;
        if (mount.Friction is null) assumptions.Add(new("/mount/friction", FormattableString.Invariant($"{BottleHold.UsualFriction}"), Practice));
        if (mount.Cradle is null) assumptions.Add(new("/mount/cradle", "90°", Practice));
        if (mount.BottleAt is null) assumptions.Add(new("/mount/bottleAt", "the centre of mass is in the middle of the bottle, from which the straps' places count", "the document gives the centre of mass alone"));
        for (var strap = 0; strap < straps.Length; strap++)
        {
            if (straps[strap].Wrap is null) assumptions.Add(new($"/mount/straps/{strap}/wrap", "180°", Practice));
            if (straps[strap].Pretension is null) assumptions.Add(new($"/mount/straps/{strap}/pretension", "0 N", "the document gives none"));
            else if (!straps[strap].IsTightenedBothEnds) assumptions.Add(new($"/mount/straps/{strap}/tightened", "one-end", "a strap with one screw; the safe side"));
        }
    }

    /// <summary>What is not answered, each in words.</summary>
    public static ImmutableArray<string> NotAnswered(Mount mount, ImmutableArray<GroupChecks> groups)
    {
        var words = ImmutableArray.CreateBuilder<string>();
        foreach (var group in groups)
            if (!group.Group.IsWhole) words.Add($"loads of the bolts of the {(group.Input.Part == MountPart.Structure ? "structure" : "adapter")}: they stand in one line, or are one or two, and cannot take every moment");
        if (mount.Panel is null) words.Add("the structure's sheet: no panel is given");
        else if (mount.Panel.Material.Tensile is null) words.Add("the structure's sheet: no strength of its material is known");
        else if (mount.Panel.Span is null) words.Add("bending of the structure's sheet: no span is given");
        if (mount.Bolts.Thread is { Material.Tensile: null } || mount.Adapter?.Bolts.Thread is { Material.Tensile: null }) words.Add("stripping of a tapped thread: no strength of its material is known");
        if (mount.Foot is null) words.Add("bending of the bracket and prying: no foot is given");
        else if (mount.Foot.Material.Yield is null) words.Add("bending of the bracket's foot: no strength of its material is known");
        if (mount.Adapter is { Material.Tensile: null }) words.Add("the adapter plate: no strength of its material is known");
        if (mount.Straps is null) words.Add("straps: none are given");
        else if (mount.Straps.Value.Any(strap => strap.Material.Yield is null)) words.Add("strength of a strap: none of its material is known");
        if (mount.Straps is null && mount.EndStops is null) words.Add("the bottle along its axis: neither straps nor endStops are given");
        else if (mount.EndStops is { } stops && stops.Any(stop => stop.Capacity is null)) words.Add("strength of an end stop: no capacity is given");
        words.Add("welds, the bracket away from its foot, the structure as a whole, fatigue and heat");
        return words.ToImmutable();
    }

    /// <summary>Thrust of the open valve: 2·p·A of a jet of liquid, N (momentum; the discharge coefficient taken as 1).</summary>
    public static Force? Thrust(Layout layout, Bottle bottle)
    {
        if (bottle.Outlet?.DipTube is not { } tube) return null;
        var bore = tube.Bore.Meters;
        return Force.FromNewtons(2 * Math.Max(0, (bottle.ChargePressure - layout.AmbientPressure).Pascals) * Math.PI / 4 * bore * bore);
    }

    static void AddBolts(string pointer, MountBolts bolts, bool hasSheet, List<Assumption> assumptions)
    {
        if (bolts.Class is null) assumptions.Add(new($"{pointer}/class", BoltCatalogue.Weakest.Id, "the document gives no class; the weakest of the table"));
        if (hasSheet && bolts.Edge is null) assumptions.Add(new($"{pointer}/edge", "three holes' diameters or more", Practice));
        if (hasSheet && bolts.Washer is null && bolts.Thread is null) assumptions.Add(new($"{pointer}/washer", "none: the bare head or nut bears on the sheet", "the document gives none"));
    }
}
