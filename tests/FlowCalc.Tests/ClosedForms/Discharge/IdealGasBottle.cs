using FlowCalc.Agents;
using FlowCalc.Discharge;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>A bottle of an ideal gas, insulated, with a constant conductance to a wall that keeps its temperature, or, where that is infinite, at constant temperature.</summary>
internal sealed class IdealGasBottle(double gasConstant, double ratio, double volume, double pressure, double temperature, double conductance) : IExpandingBottle
{
    double Cv => gasConstant / (ratio - 1);

    /// <summary>Whether it says that its stream hangs on the enthalpy alone, so that other tables follow it.</summary>
    public bool IsGas { get; init; }

    public int Length => 2;

    public double Charge => pressure * volume / (gasConstant * temperature);

    public void Start(Span<double> y) => (y[0], y[1]) = (Charge, Charge * Cv * temperature);

    public bool TryDraw(ReadOnlySpan<double> y, bool isLiquid, out Draw draw)
    {
        var t = y[1] / (y[0] * Cv);
        draw = new(y[0] * gasConstant * t / volume, t, t, 0, double.NaN, 1) { Key = IsGas ? (Cv + gasConstant) * t : double.NaN };
        return true;
    }

    public IStream? Stream(ReadOnlySpan<double> y, bool isLiquid, double lowest) => new IdealGasStream(gasConstant, ratio, y[1] / (y[0] * Cv), 1.8e-5);

    public bool TryRates(ReadOnlySpan<double> y, bool isLiquid, double flow, double step, Span<double> rates)
    {
        var t = y[1] / (y[0] * Cv);
        (rates[0], rates[1]) = (-flow, double.IsPositiveInfinity(conductance) ? -flow * Cv * t : -flow * ratio * Cv * t + conductance * (temperature - t));
        return true;
    }

    public double Agent(ReadOnlySpan<double> y) => y[0];
}
