using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Layouts;

/// <summary>An outlet to the surroundings.</summary>
/// <param name="Id">Its name in the document, unique among points.</param>
/// <param name="At">Where it is; null where not given.</param>
/// <param name="Note">Free text; null for none.</param>
/// <param name="KFactor">K in m³/(s·√Pa) of total gauge pressure at 1000 kg/m³, over 0; from the orifice where that was given.</param>
/// <param name="Orifice">The holes, where the document gives them; null for a K-factor.</param>
/// <param name="Zone">Id of its zone; null for none.</param>
/// <param name="Share">Part of the agent that it should get, 0 to 1; null where not given.</param>
/// <param name="PressureRange">Pressures at which it does its work; null where not given.</param>
/// <param name="Type">Name of its entry among the document's nozzles; null where it is described in place.</param>
public sealed record Nozzle(string Id, Place? At, string? Note, double KFactor, NozzleOrifice? Orifice, string? Zone, double? Share, PressureRange? PressureRange, string? Type)
    : LayoutPoint(Id, At, Note)
{
    /// <summary>Whether the point states the range itself, whatever the entry of its type says.</summary>
    public bool StatesRange { get; init; }

    /// <summary>Where it points; null where not given. The flow does not use it.</summary>
    public NozzleAim? Aim { get; init; }

    /// <summary>The spray that the point states itself; null where the entry of its type does, or none does. The flow does not use it.</summary>
    public Spray? Spray { get; init; }
}
