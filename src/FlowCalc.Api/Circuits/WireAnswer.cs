using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>A wire.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Resistance">Its resistance at its own temperature.</param>
/// <param name="Length">Its length one way; null where its resistance was given.</param>
/// <param name="CrossSection">Its cross-section; null where its resistance was given.</param>
/// <param name="Awg">Its American wire gauge; null where it has none.</param>
/// <param name="Temperature">Its temperature; null where its resistance was given.</param>
public sealed record WireAnswer(string Id, Quantity Resistance, Quantity? Length, Quantity? CrossSection, int? Awg, Quantity? Temperature);
