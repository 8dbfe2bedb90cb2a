using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>What an outlet draws from a bottle at an instant.</summary>
/// <param name="Pressure">Absolute pressure in the bottle, Pa.</param>
/// <param name="Temperature">Temperature of what is drawn, K.</param>
/// <param name="GasTemperature">Temperature of the gas in the bottle, K.</param>
/// <param name="LiquidVolume">Liquid in one bottle, m³; 0 in one phase.</param>
/// <param name="LiquidDensity">Density of that liquid, kg/m³.</param>
/// <param name="AgentPart">Part of the stream that is agent, the rest its driving gas, 0 to 1.</param>
internal readonly record struct Draw(double Pressure, double Temperature, double GasTemperature, double LiquidVolume, double LiquidDensity, double AgentPart)
{
    /// <summary>What alone the stream hangs on, whatever the pressure: of a saturated fluid its temperature, K, of one phase its enthalpy, J/kg; NaN where there is no one such thing.</summary>
    public double Key { get; init; } = double.NaN;
}

/// <summary>A bottle of a gas or a liquefied gas through time: its state, what its outlet draws, and how it changes.</summary>
internal interface IExpandingBottle
{
    /// <summary>Entries of its state.</summary>
    int Length { get; }

    /// <summary>Agent in one bottle at the start, kg.</summary>
    double Charge { get; }

    /// <summary>Whether it holds a gas that never condenses, whose stream hangs on its enthalpy alone.</summary>
    bool IsGas => false;

    /// <summary>Fills in the state before the valve opens.</summary>
    /// <param name="y">State; overwritten.</param>
    void Start(Span<double> y);

    /// <summary>What the outlet draws.</summary>
    /// <param name="y">State.</param>
    /// <param name="isLiquid">Whether the outlet stands in liquid, where there is any.</param>
    /// <param name="draw">What it draws.</param>
    /// <returns>False where the state has left the data.</returns>
    bool TryDraw(ReadOnlySpan<double> y, bool isLiquid, out Draw draw);

    /// <summary>The stream that it draws, for a table.</summary>
    /// <param name="y">State.</param>
    /// <param name="isLiquid">Whether the outlet stands in liquid.</param>
    /// <param name="lowest">Lowest absolute pressure asked of the stream, Pa.</param>
    /// <returns>Null where the state has left the data.</returns>
    IStream? Stream(ReadOnlySpan<double> y, bool isLiquid, double lowest);

    /// <summary>Rates of change.</summary>
    /// <param name="y">State.</param>
    /// <param name="isLiquid">Whether the outlet stands in liquid.</param>
    /// <param name="flow">Flow out of one bottle, kg/s.</param>
    /// <param name="step">Step of time that the rates are for, s: what is quicker than it need not be followed.</param>
    /// <param name="rates">Overwritten.</param>
    /// <returns>False where the state has left the data.</returns>
    bool TryRates(ReadOnlySpan<double> y, bool isLiquid, double flow, double step, Span<double> rates);

    /// <summary>Longest step that follows what is quick in the bottle, s; infinite where nothing is.</summary>
    /// <param name="y">State.</param>
    double LongestStep(ReadOnlySpan<double> y) => double.PositiveInfinity;

    /// <summary>Agent in one bottle, kg.</summary>
    /// <param name="y">State.</param>
    double Agent(ReadOnlySpan<double> y);
}
