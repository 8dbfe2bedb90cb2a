using FlowCalc.Agents;

namespace FlowCalc.Tests.Published.Agents;

/// <summary>
/// Water at one atmosphere as printed in common tables: density and viscosity as in the CRC Handbook of Chemistry and Physics, vapour pressure as in
/// steam tables (IAPWS). From memory, the books were not at hand; each is held to one unit of its last printed digit.
/// </summary>
public class WaterTests
{
    static readonly LiquidAgent Water = AgentCatalogue.Find("water")!;

    [Theory]
    [InlineData(0, 999.84)]
    [InlineData(4, 999.97)]
    [InlineData(10, 999.70)]
    [InlineData(15, 999.10)]
    [InlineData(20, 998.21)]
    [InlineData(25, 997.05)]
    [InlineData(30, 995.65)]
    [InlineData(40, 992.22)]
    [InlineData(50, 988.04)]
    [InlineData(60, 983.20)]
    [InlineData(80, 971.79)]
    [InlineData(90, 965.31)]
    public void Density_agrees_with_the_printed_table(double celsius, double expected) =>
        Assert.Equal(expected, Water.Density(celsius + 273.15), tolerance: 0.01);

    [Theory]
    [InlineData(0, 1.792)]
    [InlineData(10, 1.306)]
    [InlineData(20, 1.002)]
    [InlineData(25, 0.890)]
    [InlineData(30, 0.797)]
    [InlineData(40, 0.653)]
    [InlineData(50, 0.547)]
    [InlineData(60, 0.466)]
    [InlineData(80, 0.354)]
    public void Viscosity_agrees_with_the_printed_table(double celsius, double expectedMillipascalSeconds) =>
        Assert.Equal(expectedMillipascalSeconds, 1e3 * Water.Viscosity(celsius + 273.15), tolerance: 0.001);

    [Theory]
    [InlineData(0, 0.6112)]
    [InlineData(10, 1.2282)]
    [InlineData(20, 2.3393)]
    [InlineData(25, 3.1699)]
    [InlineData(40, 7.3849)]
    [InlineData(50, 12.352)]
    [InlineData(60, 19.946)]
    [InlineData(80, 47.414)]
    [InlineData(90, 70.182)]
    public void Vapour_pressure_agrees_with_steam_tables(double celsius, double expectedKilopascals) =>
        Assert.Equal(expectedKilopascals, 1e-3 * Water.VapourPressure(celsius + 273.15), tolerance: expectedKilopascals > 10 ? 0.001 : 0.0001);
}
