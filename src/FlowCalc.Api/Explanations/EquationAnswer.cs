using System.Collections.Immutable;

namespace FlowCalc.Api.Explanations;

/// <summary>An equation that gave numbers of the answer.</summary>
/// <param name="Id">Its name in the steps.</param>
/// <param name="Name">Its name in words.</param>
/// <param name="Form">The equation, every symbol in its SI unit. Of a sum, one term stands for as many as a step has.</param>
/// <param name="Symbols">Its symbols, that of the result first.</param>
/// <param name="Range">Where it holds.</param>
/// <param name="Source">Author, title or number, and year; <c>from memory</c> where the text was not seen.</param>
public sealed record EquationAnswer(string Id, string Name, string Form, ImmutableArray<SymbolAnswer> Symbols, string Range, string Source);
