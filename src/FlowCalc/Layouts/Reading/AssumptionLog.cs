using System.Collections.Immutable;
using System.Globalization;

namespace FlowCalc.Layouts.Reading;

/// <summary>Collects what was filled in. What is assumed in very many places is listed for the first of them and then counted.</summary>
sealed class AssumptionLog
{
    const int MostPlaces = 25;
    readonly List<Assumption> listed = [];
    readonly Dictionary<(string List, string Value), (int Count, string Source)> repeated = [];

    /// <summary>Adds one of a kind.</summary>
    public void Add(string pointer, string value, string source) => listed.Add(new Assumption(pointer, value, source));

    /// <summary>Adds one that may be made for every entry of a list.</summary>
    /// <param name="list">Pointer of the list, such as <c>/runs</c>.</param>
    /// <param name="index">Index in the list.</param>
    /// <param name="rest">What follows the index in the pointer, with its stroke.</param>
    /// <param name="value">What was taken.</param>
    /// <param name="source">Why that.</param>
    public void Add(string list, int index, string rest, string value, string source)
    {
        var (count, _) = repeated.GetValueOrDefault((list, value));
        repeated[(list, value)] = (count + 1, source);
        if (count < MostPlaces) Add(string.Create(CultureInfo.InvariantCulture, $"{list}/{index}{rest}"), value, source);
    }

    /// <summary>How many are listed.</summary>
    public int Count => listed.Count;

    /// <summary>Takes those out that have been listed since there were so many: they belong to a part of the document that other answers do not look at.</summary>
    public ImmutableArray<Assumption> TakeSince(int count)
    {
        ImmutableArray<Assumption> taken = [.. listed.Skip(count)];
        listed.RemoveRange(count, listed.Count - count);
        return taken;
    }

    public ImmutableArray<Assumption> ToArray()
    {
        foreach (var ((list, value), (count, source)) in repeated)
            if (count > MostPlaces) Add(list, string.Create(CultureInfo.InvariantCulture, $"{value}, in {count - MostPlaces} further places"), source);
        repeated.Clear();
        return [.. listed];
    }
}
