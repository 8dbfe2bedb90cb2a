namespace FlowCalc.Layouts.Coverage;

/// <summary>Where a nozzle points; one of the three is not null.</summary>
/// <param name="Direction">A direction in the layout's axes.</param>
/// <param name="Place">A place.</param>
/// <param name="Target">Id of a target.</param>
public sealed record NozzleAim(Direction? Direction, Place? Place, string? Target);
