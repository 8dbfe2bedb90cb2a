namespace FlowCalc.Circuits;

/// <summary>What a fuse carries while a push fires.</summary>
/// <param name="Fuse">Index of the fuse.</param>
/// <param name="Push">Index of the push with which it carries most; −1 where it carries nothing.</param>
/// <param name="Current">Its current with the source at its strongest, A.</param>
/// <param name="Pulse">How long it has to last: the longest pulse of the actuators, s; null where none states one.</param>
/// <param name="Holds">The time that it is sure to hold that current, s; null of a fuse without a table; infinite where it holds for ever.</param>
/// <param name="Opens">The time after which it is sure to have opened, s; null of a fuse without a table; infinite where that is not sure.</param>
public readonly record struct FuseLoad(int Fuse, int Push, double Current, double? Pulse, double? Holds, double? Opens);
