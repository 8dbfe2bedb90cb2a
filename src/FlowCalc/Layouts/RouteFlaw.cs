namespace FlowCalc.Layouts;

/// <summary>Why a tube cannot be laid from place to place.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Place">Index of the place where it is; −1 for the whole way.</param>
/// <param name="Size">The distance, m, the turn, rad, or the length that is missing, m.</param>
readonly record struct RouteFlaw(RouteFlawKind Kind, int Place, double Size);

/// <summary>What can be wrong with a way.</summary>
enum RouteFlawKind
{
    /// <summary>A place is where the one before it is.</summary>
    SamePlace,

    /// <summary>A corner turns by 179.9° or more.</summary>
    TurnsBack,

    /// <summary>There is a corner and no radius for it.</summary>
    NoRadius,

    /// <summary>The arcs need more than the whole way has.</summary>
    NoRoom,
}
