namespace FlowCalc.Api.Tests.Requests;

/// <summary>One request of an <c>.http</c> file.</summary>
/// <param name="Title">What stands after <c>###</c>.</param>
/// <param name="Expected">The status that its comment promises.</param>
/// <param name="Method">HTTP method.</param>
/// <param name="Target">Path and query.</param>
/// <param name="ContentType">Content type; null for none.</param>
/// <param name="Prefer">What the caller prefers; null for nothing.</param>
/// <param name="Body">Body; empty for none.</param>
sealed record HttpFileRequest(string Title, int Expected, string Method, string Target, string? ContentType, string? Prefer, string Body)
{
    const string Host = "{{host}}", Promise = "# expect: ";

    /// <summary>The requests of a file.</summary>
    public static IReadOnlyList<HttpFileRequest> ReadAll(string path) =>
        [.. File.ReadAllText(path).Split("\n###").Skip(1).Select(Parse)];

    static HttpFileRequest Parse(string part)
    {
        var lines = part.Split('\n');
        var expected = int.Parse(lines.Single(line => line.StartsWith(Promise, StringComparison.Ordinal))[Promise.Length..]);
        var call = Array.FindIndex(lines, line => line.Contains(Host, StringComparison.Ordinal));
        var empty = Array.FindIndex(lines, call, line => line.Trim().Length == 0);
        var (method, target) = lines[call].Split(' ') is [var first, var second] ? (first, second.Trim()[Host.Length..]) : throw new FormatException(lines[call]);
        return new(lines[0].Trim(), expected, method, target, Header(lines[call..empty], "Content-Type: "), Header(lines[call..empty], "Prefer: "), string.Join('\n', lines[(empty + 1)..]).Trim());
    }

    static string? Header(string[] lines, string name) => lines.FirstOrDefault(line => line.StartsWith(name, StringComparison.Ordinal))?[name.Length..].Trim();
}
