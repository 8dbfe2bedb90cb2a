using System.Collections.Immutable;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Layouts.Editing;

/// <summary>Paths of changes; see <see cref="DocumentChange"/>.</summary>
public static class EditPath
{
    internal const string Grammar = "a path is names parted by strokes, such as runs/R11/tube; a stroke within a name is ~1, a tilde ~0";

    const int MostSegments = 16;

    /// <summary>The names of a path; what is wrong with it where it is none.</summary>
    internal static ImmutableArray<string> Split(string path, out string? flaw)
    {
        flaw = null;
        var parts = path.Split('/');
        if (path.Length == 0) flaw = $"read an empty path: {Grammar}";
        else if (parts.Length > MostSegments) flaw = $"read {Said.Name(path)}: a path has at most {MostSegments} names";
        else if (parts.Any(part => part.Length == 0)) flaw = $"read {Said.Name(path)}: a name of it is empty; {Grammar}, without a stroke before or behind";
        else if (parts.Any(HasLooseTilde)) flaw = $"read {Said.Name(path)}: a tilde stands before neither 0 nor 1; {Grammar}";
        return flaw is null ? [.. parts.Select(part => part.Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal))] : [];
    }

    /// <summary>The path of names, each with its strokes and tildes escaped.</summary>
    /// <param name="names">The names, from the outermost object inwards.</param>
    public static string Of(params ReadOnlySpan<string> names)
    {
        var escaped = new string[names.Length];
        for (var i = 0; i < names.Length; i++) escaped[i] = JsonPointer.Escape(names[i]);
        return string.Join('/', escaped);
    }

    static bool HasLooseTilde(string part)
    {
        for (var at = part.IndexOf('~', StringComparison.Ordinal); at >= 0; at = part.IndexOf('~', at + 1))
            if (at + 1 == part.Length || part[at + 1] is not ('0' or '1')) return true;
        return false;
    }
}
