using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>F. M. White, Fluid Mechanics, ch. 6: tables of the friction factor for the smooth wall (Prandtl's law) and for fully rough flow. From memory.</summary>
public class WhiteFrictionTableTests
{
    // Tolerance of both: half a unit of the last printed digit.
    [Theory]
    [InlineData(4e3, 0.0399, TestDisplayName = "Smooth tube at Re 4e3 has the tabulated friction factor 0.0399")]
    [InlineData(1e4, 0.0309, TestDisplayName = "Smooth tube at Re 1e4 has the tabulated friction factor 0.0309")]
    [InlineData(1e5, 0.0180, TestDisplayName = "Smooth tube at Re 1e5 has the tabulated friction factor 0.0180")]
    [InlineData(1e6, 0.0116, TestDisplayName = "Smooth tube at Re 1e6 has the tabulated friction factor 0.0116")]
    [InlineData(1e7, 0.0081, TestDisplayName = "Smooth tube at Re 1e7 has the tabulated friction factor 0.0081")]
    [InlineData(1e8, 0.0059, TestDisplayName = "Smooth tube at Re 1e8 has the tabulated friction factor 0.0059")]
    public void Smooth_tube_has_the_tabulated_friction_factor(double reynolds, double published) =>
        Assert.Equal(published, DarcyFriction.Turbulent(reynolds, 0), tolerance: 5e-5);

    [Theory]
    [InlineData(1e-5, 0.00806, 5e-6, TestDisplayName = "Fully rough tube of e/D 1e-5 has the tabulated friction factor 0.00806")]
    [InlineData(1e-4, 0.0120, 5e-5, TestDisplayName = "Fully rough tube of e/D 1e-4 has the tabulated friction factor 0.0120")]
    [InlineData(1e-3, 0.0196, 5e-5, TestDisplayName = "Fully rough tube of e/D 1e-3 has the tabulated friction factor 0.0196")]
    [InlineData(1e-2, 0.0379, 5e-5, TestDisplayName = "Fully rough tube of e/D 1e-2 has the tabulated friction factor 0.0379")]
    [InlineData(5e-2, 0.0716, 5e-5, TestDisplayName = "Fully rough tube of e/D 5e-2 has the tabulated friction factor 0.0716")]
    public void Fully_rough_tube_has_the_tabulated_friction_factor(double relativeRoughness, double published, double halfDigit) =>
        Assert.Equal(published, DarcyFriction.Turbulent(1e12, relativeRoughness), tolerance: halfDigit);
}
