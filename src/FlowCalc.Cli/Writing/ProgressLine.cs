using System.Globalization;

namespace FlowCalc.Cli.Writing;

/// <summary>How far a long job is, in one line of the terminal that is written over; nothing where nobody looks.</summary>
sealed class ProgressLine(Terminal terminal) : IProgress<int>, IDisposable
{
    readonly Lock one = new();
    int shown = -1;

    /// <summary>This, where somebody looks; else null.</summary>
    public IProgress<int>? IfWatched => terminal.IsQuiet ? null : this;

    /// <inheritdoc />
    public void Report(int value)
    {
        lock (one)
        {
            if (value <= shown) return;
            shown = value;
            terminal.Error.Write(string.Create(CultureInfo.InvariantCulture, $"\r{value} samples solved "));
        }
    }

    /// <summary>Takes the line away.</summary>
    public void Clear()
    {
        lock (one)
        {
            if (shown >= 0) terminal.Error.Write("\r" + new string(' ', 40) + "\r");
            shown = -1;
        }
    }

    /// <inheritdoc />
    public void Dispose() => Clear();
}
