using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Api.Catalogue;

/// <summary>Looks up the sources that an answer names, each once.</summary>
internal static class SourceAnswers
{
    /// <summary>The sources of some keys, in the order in which they first come.</summary>
    public static ImmutableArray<Source> Of(IEnumerable<ImmutableArray<string>> keys) =>
        [.. keys.SelectMany(some => some).Distinct(StringComparer.Ordinal).Select(key => SourceCatalogue.Find(key)).OfType<Source>()];
}
