namespace FlowCalc.Examples;

/// <summary>An example layout, invented for the purpose.</summary>
/// <param name="Name">Name of a–z, 0–9 and <c>-</c>.</param>
/// <param name="Title">The document's own title.</param>
public sealed record Example(string Name, string Title);
