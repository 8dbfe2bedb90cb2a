using FlowCalc.Agents;

namespace FlowCalc.Tests.Peers.Agents;

/// <summary>
/// Liquid water from the equation of state IAPWS-95 (Wagner, Pruss 2002) as the open CoolProp library evaluates it, and from a separate evaluation of the
/// same formulations between the rows of our table, which is what shows the error of interpolation.
/// </summary>
public class WaterFormulationTests
{
    static readonly LiquidAgent Water = AgentCatalogue.Find("water")!;

    /// <summary>Temperature K, density kg/m³ at 1 bara.</summary>
    public static TheoryData<double, double> AtOneBar => new()
    {
        { 275.15, 999.9423386 },
        { 283.15, 999.7018369 },
        { 293.15, 998.2065435 },
        { 313.15, 992.2157713 },
        { 333.15, 983.1952445 },
    };

    /// <summary>Saturated liquid: temperature K, pressure Pa, density kg/m³.</summary>
    public static TheoryData<double, double, double> Saturated => new()
    {
        { 273.16, 611.654771, 999.79252 },
        { 280, 991.8203199, 999.86221 },
        { 290, 1919.999085, 998.7578446 },
        { 300, 3536.806752, 996.5130275 },
        { 310, 6231.118283, 993.3417286 },
        { 320, 10545.97623, 989.387178 },
        { 330, 17213.15167, 984.7500272 },
        { 340, 27187.81426, 979.5034485 },
    };

    /// <summary>Half-way between rows, at 1.01325 bara: temperature K, density kg/m³, viscosity Pa·s, saturation pressure Pa.</summary>
    public static TheoryData<double, double, double, double> BetweenRows => new()
    {
        { 273.65, 999.87470, 0.00176097, 633.7803 },
        { 276.65, 999.97304, 0.001592814, 785.3814 },
        { 283.65, 999.65685, 0.001287316, 1269.961 },
        { 293.65, 998.10262, 0.0009894488, 2412.764 },
        { 310.65, 993.14898, 0.0006846206, 6455.506 },
        { 323.65, 987.80808, 0.0005419603, 12661.69 },
        { 337.65, 980.82178, 0.0004360363, 24486.86 },
        { 353.65, 971.47813, 0.0003518512, 48382.6 },
        { 371.65, 959.42285, 0.0002860784, 96107.95 },
    };

    [Theory]
    [MemberData(nameof(AtOneBar))]
    public void Density_agrees_at_one_bar(double temperature, double density) =>
        Assert.Equal(density, Water.Density(temperature), tolerance: 1e-6 * density); // 13 mbar between the two pressures makes 6e-7

    [Theory]
    [MemberData(nameof(Saturated))]
    public void Vapour_pressure_agrees_and_density_differs_by_compression_alone(double temperature, double pressure, double density)
    {
        const double compressibility = 4.6e-10; // 4.4e-10 to 5.1e-10 1/Pa from 0 to 70 °C (steam tables, from memory)

        Assert.Equal(pressure, Water.VapourPressure(temperature), tolerance: 2e-5 * pressure);
        Assert.Equal(density * (1 + compressibility * (101_325 - pressure)), Water.Density(temperature), tolerance: 1e-5 * density);
    }

    [Theory]
    [MemberData(nameof(BetweenRows))]
    public void Interpolation_loses_next_to_nothing(double temperature, double density, double viscosity, double pressure)
    {
        Assert.Equal(density, Water.Density(temperature), tolerance: 2e-6 * density);
        Assert.Equal(viscosity, Water.Viscosity(temperature), tolerance: 5e-5 * viscosity);
        Assert.Equal(pressure, Water.VapourPressure(temperature), tolerance: 2e-5 * pressure);
    }
}
