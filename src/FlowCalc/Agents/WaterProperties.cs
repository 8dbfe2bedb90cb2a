using FlowCalc.ReferenceData;
using MathNet.Numerics.Interpolation;

namespace FlowCalc.Agents;

/// <summary>Liquid water at 1.01325 bara from a table with a row each kelvin.</summary>
/// <remarks>
/// Source: density and saturation pressure IAPWS-95 (Wagner, Pruss, J. Phys. Chem. Ref. Data 31 (2002) 387), viscosity the IAPWS formulation of
/// 2008 (Huber et al., J. Phys. Chem. Ref. Data 38 (2009) 101). Between rows: density by a cubic spline, since a monotone one would flatten the
/// maximum at 4 °C; the logarithms of viscosity and of vapour pressure by a monotone cubic.
/// </remarks>
internal sealed class WaterProperties : ILiquidProperties
{
    const double FreezingPointOfTable = 273.15;

    readonly CubicSpline density, logViscosity, logVapourPressure;

    WaterProperties(CsvTable table)
    {
        var temperature = Column(table, "temperature_c", celsius => celsius + 273.15);
        (LowestTemperature, HighestTemperature) = (temperature[0], temperature[^1]);
        density = CubicSpline.InterpolateNaturalSorted(temperature, Column(table, "density_kg_m3", value => value));
        logViscosity = CubicSpline.InterpolatePchipSorted(temperature, Column(table, "viscosity_mpa_s", value => Math.Log(value * 1e-3)));
        logVapourPressure = CubicSpline.InterpolatePchipSorted(temperature, Column(table, "vapour_pressure_pa", Math.Log));
    }

    /// <summary>The one table, read when first asked for.</summary>
    public static WaterProperties Instance { get; } = new(CsvTable.Embedded("agents/water.csv"));

    public double LowestTemperature { get; }

    public double HighestTemperature { get; }

    public double Density(double temperature) => density.Interpolate(temperature);

    public double Viscosity(double temperature) => Math.Exp(logViscosity.Interpolate(temperature));

    /// <summary>Below 0 °C the value at 0 °C: vapour pressure rises with temperature, so this bounds it from above.</summary>
    public double VapourPressure(double temperature) =>
        Math.Exp(logVapourPressure.Interpolate(Math.Max(temperature, FreezingPointOfTable)));

    static double[] Column(CsvTable table, string name, Func<double, double> convert) =>
        [.. table.Rows.Select(row => convert(row.Number(name)))];
}
