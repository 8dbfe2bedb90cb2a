using System.Collections.Immutable;

namespace FlowCalc.Layouts;

/// <summary>Nozzles that are of one make: those of one type of the document, or those of equal holes or K-factor that are described in place.</summary>
/// <param name="Type">Name of their type; null for those described in place.</param>
/// <param name="Points">Indices of their points, rising.</param>
public sealed record NozzleGroup(string? Type, ImmutableArray<int> Points)
{
    /// <summary>The groups of a tree's nozzles.</summary>
    /// <param name="points">All points.</param>
    /// <returns>One group a make, by the first point of each.</returns>
    public static ImmutableArray<NozzleGroup> Of(ImmutableArray<LayoutPoint> points)
    {
        var groups = new Dictionary<(string?, double, NozzleOrifice?), List<int>>();
        for (var at = 0; at < points.Length; at++)
        {
            if (points[at] is not Nozzle nozzle) continue;
            var key = nozzle.Type is { } type ? (type, 0, null) : ((string?)null, nozzle.KFactor, nozzle.Orifice);
            if (!groups.TryGetValue(key, out var members)) groups.Add(key, members = []);
            members.Add(at);
        }
        return [.. groups.OrderBy(group => group.Value[0]).Select(group => new NozzleGroup(group.Key.Item1, [.. group.Value]))];
    }
}
