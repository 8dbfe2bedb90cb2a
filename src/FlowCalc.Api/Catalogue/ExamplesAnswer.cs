using System.Collections.Immutable;
using FlowCalc.Examples;

namespace FlowCalc.Api.Catalogue;

/// <summary>The example layouts.</summary>
/// <param name="Examples">By name.</param>
public sealed record ExamplesAnswer(ImmutableArray<Example> Examples);
