using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Something to order besides tube.</summary>
/// <param name="Kind">What it is: <c>supply</c> (the connection at the bottle), <c>tee</c>, <c>reducer</c>, <c>junction</c>, <c>cap</c>, <c>nozzle</c>, the kind of a fitting, <c>clip</c> or <c>sleeve</c>.</param>
/// <param name="Name">Which one: the name of a nozzle or fitting, the tubes that it joins.</param>
/// <param name="Count">How many.</param>
/// <param name="Size">Outside diameter of the tube for a clip, least inside diameter of a sleeve, hole for a bulkhead union; null where there is none or it is not known.</param>
/// <param name="Length">Length of all of them, of a sleeve; null for what is counted.</param>
/// <param name="Note">What to know of it; null for nothing.</param>
public sealed record OrderItem(string Kind, string Name, long Count, Length? Size, Length? Length, string? Note);
