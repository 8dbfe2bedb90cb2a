using CsCheck;
using FlowCalc.Agents;
using FlowCalc.Discharge;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>A bottle's state is a function of its mass and energy alone, whatever state was found before.</summary>
public class BottleStateLaws
{
    const double Volume = 0.01;

    // Temperatures that a bottle comes to, K; fill densities, kg/m³, from a nearly empty bottle to one that is full of liquid when warm.
    [Theory]
    [InlineData("carbon-dioxide", 220, 330, 5, 950)]
    [InlineData("HFC-227ea", 230, 370, 2, 1300)]
    [InlineData("HFC-23", 200, 330, 2, 1000)]
    [InlineData("nitrogen", 200, 350, 5, 350)]
    public void State_is_found_from_mass_and_energy_however_far_away_the_last_one_was(string id, double coldest, double hottest, double thinnest, double densest)
    {
        var fluid = Fluid.Of(id);
        Gen.Select(Gen.Double[coldest, hottest], Gen.Double[coldest, hottest], Gen.Double[thinnest, densest]).Sample(
            (temperature, before, density) =>
            {
                var own = Bottle(fluid, density, temperature);
                var y = new double[own.Length];
                own.Start(y);
                if (!own.TryDraw(y, isLiquid: true, out var right) || right.Pressure > 4e7) return;

                Assert.True(Bottle(fluid, density, before).TryDraw(y, isLiquid: true, out var found));

                Assert.Equal(temperature, right.Temperature, tolerance: 1e-5 * temperature);
                Assert.Equal(temperature, found.Temperature, tolerance: 1e-5 * temperature);
                // A full bottle's pressure rises steeply with temperature.
                Assert.Equal(right.Pressure, found.Pressure, tolerance: 1e-3 * right.Pressure);
                Assert.Equal(right.LiquidVolume, found.LiquidVolume, tolerance: 1e-4 * Volume);
            },
            iter: 2_000);
    }

    static PureBottle Bottle(Fluid fluid, double density, double temperature) => new(fluid, Volume, density * Volume, temperature, new ShellHeat { Area = 0.25, Capacity = 5_000 });
}
