namespace FlowCalc.Layouts.Coverage;

/// <summary>A point that the spray has to reach, or a person whom no nozzle may be aimed at.</summary>
/// <param name="Id">Its name among the document's targets or persons.</param>
/// <param name="Zone">Id of its zone; null for none.</param>
/// <param name="At">Where it is; of a person the face.</param>
public sealed record Target(string Id, string? Zone, Place At);
