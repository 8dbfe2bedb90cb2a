using FlowCalc.Agents;

namespace FlowCalc.Bottles;

/// <summary>The gas of each cushion.</summary>
internal static class CushionGases
{
    /// <summary>Its state and its transport.</summary>
    /// <param name="gas">The cushion.</param>
    public static (RealGas Gas, GasTransport Transport) Of(CushionGas gas) => gas switch
    {
        CushionGas.Nitrogen => (RealGas.Nitrogen, GasTransport.Nitrogen),
        CushionGas.Argon => (RealGas.Argon, GasTransport.Argon),
        CushionGas.Air => (RealGas.Air, GasTransport.Air),
        _ => throw new ArgumentOutOfRangeException(nameof(gas), gas, "Not a cushion."),
    };
}
