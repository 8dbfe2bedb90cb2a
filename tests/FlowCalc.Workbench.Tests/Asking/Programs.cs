using System.Diagnostics;

namespace FlowCalc.Workbench.Tests.Asking;

/// <summary>Programs of this machine that a request is run with.</summary>
static class Programs
{
    public static bool IsThere(string name) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator).Any(folder => File.Exists(Path.Combine(folder, name)));

    /// <summary>Runs a program on one file and gives back what it prints; it must end well.</summary>
    public static async Task<string> RunAsync(string program, string file, string folder)
    {
        using var process = Process.Start(new ProcessStartInfo(program, file) { WorkingDirectory = folder, RedirectStandardOutput = true, RedirectStandardError = true })!;
        var (printed, complained) = (process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken), process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken));
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode == 0, await complained);
        return await printed;
    }
}
