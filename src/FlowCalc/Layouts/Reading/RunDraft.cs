namespace FlowCalc.Layouts.Reading;

/// <summary>A run as far as it was read; what could be read takes part in the checks of the tree.</summary>
/// <param name="Element">The run in the document.</param>
/// <param name="From">Index of the point that feeds it; −1 where it could not be read.</param>
/// <param name="To">Index of the point that it feeds; −1 where it could not be read.</param>
/// <param name="HasLeaves">Whether the document names a port, readable or not.</param>
/// <param name="Leaves">The port; null where it is not given or could not be read.</param>
/// <param name="Run">The run itself; null where something is wrong with it.</param>
readonly record struct RunDraft(JsonValue Element, int From, int To, bool HasLeaves, TeePort? Leaves, Run? Run);
