namespace FlowCalc.Api.Answers;

/// <summary>What gave the answer.</summary>
/// <param name="Version">Version of the engine.</param>
/// <param name="Data">Mark of its reference data: the start of a SHA-256 over all its tables. The same mark, the same data.</param>
public sealed record EngineAnswer(string Version, string Data);
