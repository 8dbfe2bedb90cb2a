using System.Globalization;

namespace FlowCalc.Layouts.Reading;

/// <summary>Names close to one that is not known, for the message that says so.</summary>
static class NearNames
{
    // A fault is worth a glance over a long list, not a search of a document of 100 000 names for each of a thousand faults; all faults together have their bound in the context.
    const int MostCompared = 2_000;
    const int MostListed = 12;
    const int LongestCompared = 60;

    /// <summary>A question after the closest name, or a list of those there are; starts with its own separator.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="name">The name that is not known.</param>
    /// <param name="known">The known ones.</param>
    /// <param name="further">Known ones besides; none of them is copied.</param>
    /// <param name="mostListed">How many of them the list has at most.</param>
    public static string Advice(ReadingContext context, string name, IReadOnlyCollection<string> known, IReadOnlyCollection<string>? further = null, int mostListed = MostListed)
    {
        context.Cancellation.ThrowIfCancellationRequested();
        var count = known.Count + (further?.Count ?? 0);
        if (count == 0) return "; there are none";
        var all = further is null ? known : known.Concat(further);
        var near = Nearest(context, name, all);
        var list = string.Join(", ", all.Take(mostListed).Select(one => Said.Plain(one)));
        if (count > mostListed) list += string.Create(CultureInfo.InvariantCulture, $", … ({count} in all)");
        return near is null ? $"; there are {list}" : $"; did you mean {Said.Name(near)}? There are {list}";
    }

    static string? Nearest(ReadingContext context, string name, IEnumerable<string> known)
    {
        string? best = null;
        var least = Math.Min(2, name.Length / 2) + 1;
        foreach (var one in known.Take(Math.Min(MostCompared, context.ComparisonsLeft)))
        {
            context.ComparisonsLeft--;
            if (string.Equals(one, name, StringComparison.OrdinalIgnoreCase)) return one;
            if (Math.Abs(one.Length - name.Length) >= least || Math.Max(one.Length, name.Length) > LongestCompared) continue;
            var steps = Steps(name, one, least);
            if (steps < least) (best, least) = (one, steps);
        }
        return best;
    }

    // Damerau's count of letters to insert, drop, change or swap with the next (Comm. ACM 7 (1964) 171, from memory), each pair swapped once.
    // A count of enough or more is not worked out: it cannot come from cells further than that from the diagonal (Ukkonen, Inf. Control 64 (1985) 100, from memory).
    static int Steps(string from, string to, int enough)
    {
        var reach = enough - 1;
        Span<int> before = stackalloc int[LongestCompared + 2], last = stackalloc int[LongestCompared + 2], row = stackalloc int[LongestCompared + 2];
        for (var j = 0; j <= to.Length; j++) last[j] = j;
        var leastOfLast = 0;
        for (var i = 1; i <= from.Length; i++)
        {
            var (low, high) = (Math.Max(1, i - reach), Math.Min(to.Length, i + reach));
            row[low - 1] = low == 1 ? i : enough;
            row[high + 1] = enough;
            var least = row[low - 1];
            for (var j = low; j <= high; j++)
            {
                var changed = char.ToLowerInvariant(from[i - 1]) == char.ToLowerInvariant(to[j - 1]) ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + changed);
                if (i > 1 && j > 1 && from[i - 1] == to[j - 2] && from[i - 2] == to[j - 1]) row[j] = Math.Min(row[j], before[j - 2] + 1);
                least = Math.Min(least, row[j]);
            }
            if (least >= enough && leastOfLast >= enough) return enough;
            leastOfLast = least;
            var free = before;
            before = last;
            last = row;
            row = free;
        }
        return last[to.Length];
    }
}
