using System.Runtime.CompilerServices;
using FlowCalc.Agents;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>A compressible path read from a table.</summary>
/// <param name="table">The table.</param>
internal readonly struct TablePath(ExpansionTable table) : ICompressiblePath
{
    /// <inheritdoc/>
    public double ReferenceDensity => table.ReferenceDensity;

    /// <inheritdoc/>
    public double LogTop => table.LogTop;

    /// <inheritdoc/>
    public double LogLow => table.LogLow;

    /// <inheritdoc/>
    public double LogAmbient => table.LogAmbient;

    /// <inheritdoc/>
    public bool HasHeads => true;

    /// <inheritdoc/>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    public PathPoint At(double log)
    {
        var point = table.At(log);
        return new(point.Potential, point.Work, point.Density, point.Quotient, point.DensitySlope);
    }

    /// <inheritdoc/>
    public double LogOf(double potential, double guess) => table.LogOf(potential, guess);

    /// <inheritdoc/>
    public double ChokingLog(double flux) => table.ChokingLog(flux);

    /// <inheritdoc/>
    public (double Flux, double Slope) Nozzle(double log) => table.Nozzle(log);

    /// <inheritdoc/>
    public double Viscosity(double log) => table.Viscosity(log);
}
