using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>What applications stand for where a document does not say.</summary>
/// <param name="Applications">The applications; <c>general</c> holds where a document names none.</param>
/// <param name="Sources">The sources that they name.</param>
public sealed record ApplicationsAnswer(ImmutableArray<ApplicationAnswer> Applications, ImmutableArray<Source> Sources);
