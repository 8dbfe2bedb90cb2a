using FlowCalc.Agents;

namespace FlowCalc.Tests.Peers.Agents;

/// <summary>Viscosity at 0.1 MPa, µPa·s, by Lemmon and Jacobsen's full equations as the open CoolProp library gives them; conductivity of handbooks, mW/(m·K), from memory.</summary>
public class GasTransportTests
{
    [Theory]
    [InlineData(230, 14.49, 18.117)]
    [InlineData(273.15, 16.629, 21.016)]
    [InlineData(293.15, 17.573, 22.306)]
    [InlineData(333.15, 19.383, 24.793)]
    public void Viscosity_of_the_dilute_gas_is_that_of_the_full_equation(double temperature, double nitrogen, double argon)
    {
        Assert.Equal(nitrogen * 1e-6, GasTransport.Nitrogen.Viscosity(temperature), tolerance: 2e-3 * nitrogen * 1e-6);
        Assert.Equal(argon * 1e-6, GasTransport.Argon.Viscosity(temperature), tolerance: 2e-3 * argon * 1e-6);
    }

    [Fact]
    public void Conductivity_at_300_K_is_that_of_the_handbooks()
    {
        Assert.Equal(25.9e-3, GasTransport.Nitrogen.Conductivity(300), tolerance: 3e-4);
        Assert.Equal(17.7e-3, GasTransport.Argon.Conductivity(300), tolerance: 3e-4);
        Assert.Equal(26.3e-3, GasTransport.Air.Conductivity(300), tolerance: 3e-4);
    }
}
