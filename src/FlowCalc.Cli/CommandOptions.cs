using System.CommandLine;
using System.Globalization;
using FlowCalc.Api.Requests;
using FlowCalc.Findings;
using FlowCalc.Quantities;

namespace FlowCalc.Cli;

/// <summary>What every command takes beside its document.</summary>
sealed class CommandOptions
{
    const string Dash = "-";

    readonly Argument<string> file = new("file") { Description = "The document; - or nothing for standard input.", DefaultValueFactory = _ => Dash };

    readonly Option<UnitSystem> units = Word(new Option<UnitSystem>("--units") { Description = "Units of the answer: metric, us or si.", DefaultValueFactory = _ => UnitSystem.Metric });

    readonly Option<bool> json = new("--json") { Description = "Answer in JSON, as the service does." };

    readonly Option<bool> strict = new("--strict") { Description = "End with 1 where there is a warning too." };

    /// <summary>The options of a command.</summary>
    public CommandOptions() => file.Validators.Add(result =>
    {
        // Else an option that a command has not would be taken for the name of a file.
        if (result.Tokens is [{ Value: ['-', _, ..] word }]) result.AddError($"{word} is no option of this command; a file of that name is written ./{word}.");
    });

    /// <summary>Puts them on a command.</summary>
    /// <param name="command">The command.</param>
    /// <param name="withJson">Whether it answers in JSON where that is asked.</param>
    /// <param name="withVerdict">Whether what it gives has units to choose and a verdict; a file for another program has neither.</param>
    public void AddTo(Command command, bool withJson = true, bool withVerdict = true)
    {
        command.Arguments.Add(file);
        if (!withVerdict) return;
        command.Options.Add(units);
        if (withJson) command.Options.Add(json);
        command.Options.Add(strict);
    }

    /// <summary>What was asked.</summary>
    public Asked Asked(ParseResult line, IProgress<int>? progress = null) =>
        new(line.GetValue(units), line.GetValue(json), line.GetValue(strict) ? Severity.Warn : Severity.Fail, progress);

    /// <summary>The document.</summary>
    /// <exception cref="IOException">It cannot be read.</exception>
    public async Task<ReadOnlyMemory<byte>> ReadAsync(ParseResult line, Terminal terminal, CancellationToken cancel)
    {
        var path = line.GetValue(file);
        using var whole = new MemoryStream();
        if (path is null or Dash) await terminal.Input.CopyToAsync(whole, cancel);
        else await whole.WriteAsync(await File.ReadAllBytesAsync(path, cancel), cancel);
        var document = whole.GetBuffer().AsMemory(0, (int)whole.Length);
        return document.Span.IndexOfAnyExcept(" \t\r\n"u8) >= 0 ? document
            : throw new EndOfStreamException($"{(path is null or Dash ? "Standard input" : path)} is empty; it should be a document in JSON, as a file or on standard input.");
    }

    /// <summary>Takes the words of an option's kind alone, and not the numbers that stand behind them.</summary>
    /// <param name="option">The option.</param>
    public static Option<T> Word<T>(Option<T> option) where T : struct, Enum
    {
        option.AcceptOnlyFromAmong(StringComparer.OrdinalIgnoreCase, Enum.GetNames<T>().Select(name => name.ToLowerInvariant()).ToArray());
        return option;
    }

    /// <summary>An option that names the file to write.</summary>
    public static Option<string?> Output()
    {
        var option = new Option<string?>("--output", "-o") { Description = "The file to write; standard output where left out." };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: "" }]) result.AddError("--output: no file is named.");
        });
        return option;
    }

    /// <summary>An option that is a line of text to be printed, held to what the service takes.</summary>
    /// <param name="name">Its name.</param>
    /// <param name="description">What it is.</param>
    public static Option<string?> Line(string name, string description)
    {
        var option = new Option<string?>(name) { Description = description };
        option.Validators.Add(result =>
        {
            if (result.Tokens is [{ Value: var text }] && QueryText.Fault(name, text) is { } fault) result.AddError(fault);
        });
        return option;
    }

    /// <summary>Writes a file, or standard output where none is named.</summary>
    /// <exception cref="IOException">It cannot be written.</exception>
    public static async Task WriteAsync(string? path, ReadOnlyMemory<byte> bytes, Terminal terminal, CancellationToken cancel)
    {
        if (path is not null) await File.WriteAllBytesAsync(path, bytes, cancel);
        else await terminal.Output.WriteAsync(bytes, cancel);
    }

    /// <summary>An option that is a day.</summary>
    public static Option<DateOnly?> Day() => new("--today")
    {
        Description = "The day for which dates are judged, such as 2026-11-25; without it they are not, and no clock is asked.",
        CustomParser = result =>
        {
            var text = result.Tokens.Single().Value;
            if (DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day)) return day;
            result.AddError($"--today: \"{text}\" is no day; one is written as 2026-11-25.");
            return null;
        },
    };
}
