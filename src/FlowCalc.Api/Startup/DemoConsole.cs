using Spectre.Console;

namespace FlowCalc.Api.Startup;

/// <summary>Where the demo is printed: the terminal in colour, or plain text where the output goes to a file or a pipe.</summary>
internal static class DemoConsole
{
    const int LeastWidth = 110, PlainWidth = 120;

    /// <summary>The console of this process.</summary>
    public static IAnsiConsole OfProcess() => Console.IsOutputRedirected ? Plain(Console.Out) : Wide(AnsiConsole.Create(new AnsiConsoleSettings()));

    /// <summary>A console that writes plain text.</summary>
    public static IAnsiConsole Plain(TextWriter writer)
    {
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
        });
        console.Profile.Width = PlainWidth;
        return console;
    }

    // A narrower table would break its numbers over lines.
    static IAnsiConsole Wide(IAnsiConsole console)
    {
        console.Profile.Width = Math.Max(console.Profile.Width, LeastWidth);
        return console;
    }
}
