using System.Collections.Immutable;

namespace FlowCalc.Layouts.Reading;

/// <summary>The fields of one kind of object, whatever enumeration they come from.</summary>
interface IFieldTable
{
    /// <summary>The fields' names in the document.</summary>
    ImmutableArray<string> Names { get; }
}
