namespace FlowCalc.Discharge;

/// <summary>An end by which liquid leaves what is wetted.</summary>
/// <param name="Point">Point in the wetted tree.</param>
/// <param name="Run">Run of the whole line that ends there, or in which the front stands.</param>
/// <param name="Nozzle">Index among the line's nozzles; −1 for a front.</param>
internal readonly record struct Outlet(int Point, int Run, int Nozzle);
