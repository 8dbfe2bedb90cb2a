using System.Collections.Immutable;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Catalogue;

/// <summary>A fitting. What is null is not known here, belongs to the make, and must be given in the layout where it matters.</summary>
/// <param name="Id">Id, as <c>fittings</c> of a run may name it.</param>
/// <param name="Kind">Kind, as a layout document names it.</param>
/// <param name="Bore">Least bore.</param>
/// <param name="Length">Length of that bore.</param>
/// <param name="LossCoefficient">Loss coefficient on the velocity head of the tube.</param>
/// <param name="Kv">Flow coefficient Kv, in m³/h at 1 bar, whatever the units asked for.</param>
/// <param name="Insertion">How deep the tube goes in.</param>
/// <param name="Note">What to know before relying on the figures.</param>
/// <param name="Sources">Keys of its sources.</param>
public sealed record FittingAnswer(
    string Id, string Kind, Quantity? Bore, Quantity? Length, double? LossCoefficient, double? Kv, Quantity? Insertion, string Note, ImmutableArray<string> Sources);
