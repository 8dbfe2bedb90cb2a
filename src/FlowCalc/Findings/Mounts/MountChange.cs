using System.Collections.Immutable;
using FlowCalc.Layouts.Mounts;

namespace FlowCalc.Findings.Mounts;

/// <summary>One change of a mount, to be tried.</summary>
/// <param name="Changes">What is changed in the document: all of it together is the one change.</param>
/// <param name="Words">The change in words, such as <c>M8 instead of M6 into the structure</c>.</param>
/// <param name="Changed">The mount with it, as the changed document reads.</param>
sealed record MountChange(ImmutableArray<CureChange> Changes, string Words, Mount Changed);
