using System.Collections.Immutable;
using FlowCalc.Layouts;

namespace FlowCalc.Studies;

/// <summary>What came of reading the request of a study: the request, or every fault in it.</summary>
/// <typeparam name="TRequest">The request.</typeparam>
/// <param name="Request">The request; null where there are faults.</param>
/// <param name="Faults">All faults, in the text's order, those of a layout within it included; empty where there is a request.</param>
public sealed record StudyReading<TRequest>(TRequest? Request, ImmutableArray<LayoutFault> Faults)
    where TRequest : class;
