namespace FlowCalc.Api.Documentation;

/// <summary>How the contract describes the variable part of a path.</summary>
/// <param name="Name">Its name in the path.</param>
/// <param name="Description">What it is.</param>
/// <param name="Example">A value that has an answer.</param>
internal sealed record PathParameter(string Name, string Description, string Example);
