using System.Collections.Immutable;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Coverage;

/// <summary>What the document left open, gathered while the coverage is worked out.</summary>
sealed class CoverageNotes
{
    readonly List<string> notAnswered = [];
    readonly List<Assumption> assumptions = [];

    public ImmutableArray<string> NotAnswered => [.. notAnswered];

    public ImmutableArray<Assumption> Assumptions => [.. assumptions];

    public void NotAnswer(string what) => notAnswered.Add(what);

    /// <summary>Something of a zone that was taken.</summary>
    public void Assume(string zone, string member, string value, string source) => assumptions.Add(new("/" + EditPath.Of("zones", zone, member), value, source));
}
