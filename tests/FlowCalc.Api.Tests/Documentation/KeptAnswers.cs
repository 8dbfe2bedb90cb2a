using System.Reflection;

namespace FlowCalc.Api.Tests.Documentation;

/// <summary>Files beside the code that are kept in step with the service: tests compare, and write them anew where the environment says <c>FLOWCALC_KEEP=1</c>.</summary>
static class KeptAnswers
{
    static readonly string Folder = typeof(KeptAnswers).Assembly.GetCustomAttributes<AssemblyMetadataAttribute>().Single(data => data.Key == "ApiFolder").Value!;

    /// <summary>Whether files are to be written.</summary>
    public static bool Writes { get; } = Environment.GetEnvironmentVariable("FLOWCALC_KEEP") == "1";

    /// <summary>Writes a file of the service's project, and stops the test, as what it would compare has been built in.</summary>
    public static async Task Keep(string path, string text)
    {
        if (!Writes)
            return;
        var file = Path.Combine(Folder, path);
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        await File.WriteAllTextAsync(file, text, TestContext.Current.CancellationToken);
        Assert.Skip($"Wrote {path}; build and test again.");
    }
}
