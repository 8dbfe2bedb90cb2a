namespace FlowCalc.Api.CutLists;

/// <summary>Which piece.</summary>
/// <param name="Run">Id of its run.</param>
/// <param name="Number">Its number within the run.</param>
public sealed record PieceNameAnswer(string Run, int Number);
