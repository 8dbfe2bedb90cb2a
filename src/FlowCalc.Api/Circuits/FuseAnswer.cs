using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Circuits;

/// <summary>A fuse while the circuit fires, with the source at its strongest.</summary>
/// <param name="Id">Its name.</param>
/// <param name="Rating">Its rated current.</param>
/// <param name="Current">The largest current of all pushes for firing.</param>
/// <param name="Pulse">How long it has to last: the longest pulse of the actuators; null where none states one.</param>
/// <param name="Holds">The time that it is sure to hold; null where it holds for ever, and of a fuse whose times are not known.</param>
/// <param name="Opens">The time after which it is sure to have opened; null where that is not sure, and of a fuse whose times are not known.</param>
/// <param name="TimesKnown">Whether its times are known.</param>
public sealed record FuseAnswer(string Id, Quantity Rating, Quantity Current, Quantity? Pulse, Quantity? Holds, Quantity? Opens, bool TimesKnown);
