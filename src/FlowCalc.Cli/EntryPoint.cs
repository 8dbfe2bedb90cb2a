namespace FlowCalc.Cli;

/// <summary>Where the process starts.</summary>
static class EntryPoint
{
    static async Task<int> Main(string[] words)
    {
        await using var input = Console.OpenStandardInput();
        await using var output = Console.OpenStandardOutput();
        return await CommandLine.RunAsync(words, new Terminal(input, output, Console.Error, Console.IsOutputRedirected, Console.IsErrorRedirected));
    }
}
