using FlowCalc.Findings;

namespace FlowCalc.Cli;

/// <summary>What a command ends with.</summary>
static class ExitCode
{
    /// <summary>There is an answer, and its verdict is not one that was asked to be told.</summary>
    public const int Passed = 0;

    /// <summary>There is an answer, and its verdict is as bad as was asked to be told, or worse.</summary>
    public const int Found = 1;

    /// <summary>There is no answer: a fault in the document or in the command.</summary>
    public const int Fault = 2;

    /// <summary>The code of a verdict.</summary>
    /// <param name="verdict">The verdict.</param>
    /// <param name="least">The mildest that is told.</param>
    public static int Of(Severity verdict, Severity least) => verdict >= least ? Found : Passed;
}
