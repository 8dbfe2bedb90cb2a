using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>
/// Freezing point, density and viscosity of one aqueous solution as polynomials in mass fraction and temperature. The published polynomials are
/// evaluated as they stand, so nothing is lost between the rows of a table.
/// </summary>
/// <remarks>
/// Source: Melinder, Properties of Secondary Working Fluids for Indirect Systems, 2nd ed., IIR 2010, coefficients as collected in the open
/// CoolProp library: the sum of C_ij (x − x_m)^i (t − t_m)^j with x in per cent by mass and t in °C; viscosity as ln(µ in mPa·s), freezing point
/// with j = 0 alone.
/// </remarks>
internal sealed class MixtureCorrelation
{
    const int FractionPowers = 6, TemperaturePowers = 4;

    readonly double centralFraction, centralTemperature;
    readonly double[,] density = new double[FractionPowers, TemperaturePowers];
    readonly double[,] logViscosity = new double[FractionPowers, TemperaturePowers];
    readonly double[,] freezingPoint = new double[FractionPowers, TemperaturePowers];

    public MixtureCorrelation(CsvRow range, IEnumerable<CsvRow> coefficients)
    {
        centralFraction = range.Number("central_mass_fraction_percent");
        centralTemperature = range.Number("central_temperature_c");
        HighestTemperature = range.Number("highest_temperature_c") + 273.15;
        foreach (var row in coefficients)
        {
            var (i, j) = ((int)row.Number("fraction_power"), (int)row.Number("temperature_power"));
            density[i, j] = row.Number("density_kg_m3");
            logViscosity[i, j] = row.Number("ln_viscosity_mpa_s");
            freezingPoint[i, j] = row.OptionalNumber("freezing_point_c") ?? 0;
        }
    }

    /// <summary>Highest temperature of the data, K.</summary>
    public double HighestTemperature { get; }

    /// <summary>Freezing point of a solution, K.</summary>
    public double FreezingPoint(double massFraction) => Sum(freezingPoint, massFraction, centralTemperature) + 273.15;

    /// <summary>Density, kg/m³, of a solution at a temperature in K.</summary>
    public double Density(double massFraction, double temperature) => Sum(density, massFraction, temperature - 273.15);

    /// <summary>Dynamic viscosity, Pa·s, of a solution at a temperature in K.</summary>
    public double Viscosity(double massFraction, double temperature) =>
        1e-3 * Math.Exp(Sum(logViscosity, massFraction, temperature - 273.15));

    double Sum(double[,] coefficients, double massFraction, double celsius)
    {
        var x = 100 * massFraction - centralFraction;
        var t = celsius - centralTemperature;
        var sum = 0.0;
        for (var i = FractionPowers - 1; i >= 0; i--)
        {
            var inner = 0.0;
            for (var j = TemperaturePowers - 1; j >= 0; j--) inner = inner * t + coefficients[i, j];
            sum = sum * x + inner;
        }
        return sum;
    }
}
