namespace FlowCalc.Layouts.Reading;

/// <summary>The kinds of point, in the order of their words.</summary>
enum PointKind
{
    Unknown = -1,
    Supply,
    Tee,
    Reducer,
    Junction,
    Nozzle,
    Cap,
}

/// <summary>A point as far as it was read; what could be read takes part in the checks of the tree.</summary>
/// <param name="Element">The point in the document.</param>
/// <param name="Kind">Its kind; <see cref="PointKind.Unknown"/> where it could not be read.</param>
/// <param name="Id">Its id; null where it could not be read.</param>
/// <param name="HasPlace">Whether the document gives a place, readable or not.</param>
/// <param name="At">The place; null where it is not given or could not be read.</param>
/// <param name="FedThrough">Of a tee whose port could be read.</param>
/// <param name="Point">The point itself; null where something is wrong with it.</param>
readonly record struct PointDraft(JsonValue Element, PointKind Kind, string? Id, bool HasPlace, Place? At, TeePort? FedThrough, LayoutPoint? Point);
