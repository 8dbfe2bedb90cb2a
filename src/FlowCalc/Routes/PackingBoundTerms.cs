namespace FlowCalc.Routes;

/// <summary>What a bound of a packing is made of.</summary>
/// <param name="Content">All sizes together.</param>
/// <param name="ByContent">Least cost of that content.</param>
/// <param name="Large">Cost of the sizes over half the largest capacity, each alone.</param>
/// <param name="Bins">Least number of bins of the largest capacity.</param>
/// <param name="Half">Sizes over half that have a bin each in it.</param>
/// <param name="Rest">Content of the shorter sizes that count in it.</param>
/// <param name="Room">Room for these beside the others.</param>
/// <param name="Least">The bound.</param>
readonly record struct PackingBoundTerms(long Content, long ByContent, long Large, long Bins, long Half, long Rest, long Room, long Least);
