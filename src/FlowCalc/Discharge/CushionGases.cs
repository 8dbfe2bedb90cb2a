using FlowCalc.Agents;
using FlowCalc.Bottles;

namespace FlowCalc.Discharge;

/// <summary>The gas of each cushion.</summary>
internal static class CushionGases
{
    /// <summary>Its state and its transport.</summary>
    /// <param name="gas">The cushion.</param>
    public static (IGas Gas, GasTransport Transport) Of(CushionGas gas) => gas switch
    {
        CushionGas.Nitrogen => (new IdealGas(296.8, 1.4), new GasTransport()),
        _ => (new IdealGas(208.1, 1.667), new GasTransport()),
    };
}
