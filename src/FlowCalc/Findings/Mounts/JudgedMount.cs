using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Limits;
using FlowCalc.Mounts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Mounts;

/// <summary>What the rules of a mount look at.</summary>
sealed class JudgedMount(Layout layout, Mount mount, MountResult result, UnitSystem units, ImmutableArray<Limit> limits)
    : JudgedAnswer(layout, units, limits)
{
    public Mount Mount { get; } = mount;

    public MountResult Result { get; } = result;

    /// <summary>The groups of bolts, that of the structure first.</summary>
    public IEnumerable<(MountPart Part, MountBolts Bolts)> Groups =>
        Mount.Adapter is { } adapter ? [(MountPart.Structure, Mount.Bolts), (MountPart.Adapter, adapter.Bolts)] : [(MountPart.Structure, Mount.Bolts)];

    /// <summary>A force in a sentence.</summary>
    public string Text(UnitsNet.Force force) => Wording.Of(force.Newtons, QuantityKind.Force, Units);

    /// <summary>A length in a sentence.</summary>
    public string Text(UnitsNet.Length length) => Wording.Of(length, Units);

    /// <summary>A group of bolts in a sentence.</summary>
    public static string Name(MountPart part, MountBolts bolts) =>
        $"{bolts.Size.Id} {bolts.Class?.Id ?? "bolts without a class"} {(part == MountPart.Structure ? "into the structure" : "into the adapter")}";

    /// <summary>Place of a part among the findings of one code.</summary>
    public static int Item(MountPart part) => (int)part;
}
