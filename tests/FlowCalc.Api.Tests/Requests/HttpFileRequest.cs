namespace FlowCalc.Api.Tests.Requests;

/// <summary>One request of an <c>.http</c> file.</summary>
/// <param name="Title">What stands after <c>###</c>.</param>
/// <param name="Expected">The status that its comment promises.</param>
/// <param name="Method">HTTP method.</param>
/// <param name="Target">Path and query.</param>
/// <param name="ContentType">Content type; null for none.</param>
/// <param name="Body">Body; empty for none.</param>
sealed record HttpFileRequest(string Title, int Expected, string Method, string Target, string? ContentType, string Body)
{
    const string Host = "{{host}}", Promise = "# expect: ", Type = "Content-Type: ";

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
        var type = lines[call..empty].FirstOrDefault(line => line.StartsWith(Type, StringComparison.Ordinal))?[Type.Length..].Trim();
        return new(lines[0].Trim(), expected, method, target, type, string.Join('\n', lines[(empty + 1)..]).Trim());
    }
}
