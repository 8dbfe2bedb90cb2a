namespace FlowCalc.Api.Reports;

/// <summary>A title as the name of a file that every system takes and no header trips over: small letters, figures and single hyphens.</summary>
internal static class FileName
{
    const int Longest = 60;

    /// <summary>The name, without its extension; <c>report</c> where the title has nothing that may stand in one.</summary>
    /// <param name="title">The title.</param>
    public static string Of(string title)
    {
        var words = string.Concat(title.Take(4 * Longest).Select(letter => char.IsAsciiLetterOrDigit(letter) ? char.ToLowerInvariant(letter) : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var name = string.Join('-', words);
        name = name.Length > Longest ? name[..Longest].TrimEnd('-') : name;
        return name.Length == 0 ? "report" : name;
    }
}
