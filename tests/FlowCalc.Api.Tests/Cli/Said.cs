using System.Text;
using FlowCalc.Cli;

namespace FlowCalc.Api.Tests.Cli;

/// <summary>What a command said.</summary>
/// <param name="Code">What it ended with.</param>
/// <param name="Bytes">Its output.</param>
/// <param name="Error">What it wrote beside that.</param>
sealed record Said(int Code, byte[] Bytes, string Error)
{
    /// <summary>Its output as text.</summary>
    public string Output => Encoding.UTF8.GetString(Bytes);

    /// <summary>Carries a line out with a document as its standard input.</summary>
    public static Task<Said> OfAsync(string document, params string[] words) => OfAsync(document, TestContext.Current.CancellationToken, words);

    /// <summary>The same, which may be cancelled.</summary>
    public static async Task<Said> OfAsync(string document, CancellationToken cancel, params string[] words)
    {
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(document));
        using var output = new MemoryStream();
        await using var error = new StringWriter();
        var code = await CommandLine.RunAsync(words, new Terminal(input, output, error, IsPlain: true, IsQuiet: true), cancel);
        return new(code, output.ToArray(), error.ToString());
    }
}
