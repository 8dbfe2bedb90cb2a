namespace FlowCalc.Workbench.Asking;

/// <summary>The request behind what the page shows, for other programs: the same document, the same call.</summary>
static class CallSample
{
    /// <summary>For a shell.</summary>
    /// <param name="address">Address of the service, ending with a stroke.</param>
    /// <param name="call">The call with its query, such as <c>v1/flow?units=us</c>.</param>
    /// <param name="file">Name of the file that the document is saved as.</param>
    public static string Curl(string address, string call, string file) =>
        $"""
        curl --fail-with-body --json @{Quoted(file)} \
          {Quoted(address + call)}
        """;

    /// <summary>For .NET.</summary>
    public static string CSharp(string address, string call, string file) =>
        $$"""
        using System.Text;

        using var client = new HttpClient { BaseAddress = new Uri("{{address}}") };
        using var layout = new StringContent(File.ReadAllText({{Literal(file)}}), Encoding.UTF8, "application/json");
        using var answer = await client.PostAsync("{{call}}", layout);
        Console.WriteLine(await answer.Content.ReadAsStringAsync());
        answer.EnsureSuccessStatusCode();
        """;

    /// <summary>For Python 3, with nothing to install.</summary>
    public static string Python(string address, string call, string file) =>
        $$"""
        import urllib.error, urllib.request

        with open({{Literal(file)}}, "rb") as layout:
            request = urllib.request.Request("{{address}}{{call}}", layout.read(), {"Content-Type": "application/json"})
        try:
            with urllib.request.urlopen(request) as answer:
                print(answer.read().decode())
        except urllib.error.HTTPError as fault:
            raise SystemExit(fault.read().decode())
        """;

    static string Quoted(string text) => "'" + text.Replace("'", "'\\''", StringComparison.Ordinal) + "'";

    static string Literal(string text) => "\"" + text.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal) + "\"";
}
