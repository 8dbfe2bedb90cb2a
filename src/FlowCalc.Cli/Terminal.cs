namespace FlowCalc.Cli;

/// <summary>Where a command reads and writes.</summary>
/// <param name="Input">Standard input.</param>
/// <param name="Output">Where answers go.</param>
/// <param name="Error">Where faults and progress go.</param>
/// <param name="IsPlain">Whether answers are plain text, without colours: they go to a file or a pipe.</param>
/// <param name="IsQuiet">Whether nobody looks at progress.</param>
sealed record Terminal(Stream Input, Stream Output, TextWriter Error, bool IsPlain, bool IsQuiet);
