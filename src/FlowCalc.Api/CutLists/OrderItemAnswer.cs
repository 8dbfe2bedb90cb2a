using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>Something to order besides tube.</summary>
/// <param name="Kind">What it is: supply (the connection there), tee, reducer, junction, cap, nozzle, the kind of a fitting, clip or sleeve.</param>
/// <param name="Name">Which one: the name of a nozzle or fitting, the tubes that it joins.</param>
/// <param name="Count">How many.</param>
/// <param name="Size">Outside diameter of the tube for a clip, least inside diameter of a sleeve, hole for a bulkhead union; null where there is none.</param>
/// <param name="Length">Length of all of them, of a sleeve; null for what is counted.</param>
/// <param name="Note">What to know of it; null for nothing.</param>
public sealed record OrderItemAnswer(string Kind, string Name, long Count, Quantity? Size, Quantity? Length, string? Note);
