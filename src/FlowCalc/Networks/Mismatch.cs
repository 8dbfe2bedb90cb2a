namespace FlowCalc.Networks;

/// <summary>What a solve leaves over once the flows balance at every point.</summary>
/// <param name="Mass">Largest mismatch of a nozzle's flow with its law at its pressure, relative to the total flow, dimensionless.</param>
/// <param name="Pressure">Largest mismatch of a run's drop with its loss, Pa.</param>
/// <param name="RelativePressure">The same relative to the highest pressure, dimensionless.</param>
internal readonly record struct Mismatch(double Mass, double Pressure, double RelativePressure)
{
    /// <summary>Whether both relative parts are small enough; a NaN is not.</summary>
    /// <param name="most">Largest part of mass allowed, dimensionless; a pressure may be ten times as far off, since each is a difference of larger ones.</param>
    public bool IsWithin(double most) => Mass <= most && RelativePressure <= 10 * most;
}
