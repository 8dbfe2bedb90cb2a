using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Layouts;

/// <summary>A nozzle that the document names.</summary>
/// <param name="Name">Its name among the document's nozzles.</param>
/// <param name="KFactor">K in m³/(s·√Pa) of total gauge pressure at 1000 kg/m³, over 0; from the orifice where that was given.</param>
/// <param name="Orifice">The holes, where the document gives them; null for a K-factor.</param>
/// <param name="PressureRange">Pressures at which it does its work; null where not given.</param>
public sealed record NozzleType(string Name, double KFactor, NozzleOrifice? Orifice, PressureRange? PressureRange)
{
    /// <summary>Its spray; null where not given.</summary>
    public Spray? Spray { get; init; }
}
