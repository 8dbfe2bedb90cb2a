using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>
/// A blend of gases as one fundamental equation: αʳ = Σ x_i·αʳ_i(δ, τ) with reducing values that hang on the composition (Kunz, Wagner 2012, GERG-2008),
/// over the components' own reference equations.
/// </summary>
/// <remarks>
/// Volumes of the pure components added at the same temperature and pressure would jump where carbon dioxide alone condenses; this does not. Departure
/// functions are left out (among these gases only nitrogen with carbon dioxide has one, and 0.52·0.08 of it would count).
/// </remarks>
internal sealed class HelmholtzBlend : IFluidEquation
{
    // J/(mol·K): that of all the components' equations.
    const double MolarGasConstant = 8.31451;

    readonly ImmutableArray<(double Part, HelmholtzEquation Equation)> components;
    readonly ImmutableArray<string> ids;

    HelmholtzBlend(IReadOnlyList<CsvRow> rows)
    {
        components = [.. rows.Select(row => (row.Number("molar_fraction"), HelmholtzEquation.Of(row.Text("component"))))];
        Title = rows[0].Text("title");
        MolarMass = components.Sum(component => component.Part * component.Equation.MolarMass);
        GasConstant = MolarGasConstant / MolarMass;
        ids = [.. rows.Select(row => row.Text("component"))];
        var (volume, temperature) = Reduce();
        (ReducingTemperature, ReducingDensity) = (temperature, MolarMass / volume);
        Sources = [.. rows.SelectMany(row => row.Sources).Concat(components.SelectMany(component => component.Equation.Sources)).Append("kunz-wagner-2012").Distinct()];
    }

    /// <summary>Name for people.</summary>
    public string Title { get; }

    /// <summary>Molar mass, kg/mol.</summary>
    public double MolarMass { get; }

    /// <inheritdoc/>
    public double GasConstant { get; }

    /// <inheritdoc/>
    public double ReducingTemperature { get; }

    /// <inheritdoc/>
    public double ReducingDensity { get; }

    /// <summary>Keys into the table of sources.</summary>
    public ImmutableArray<string> Sources { get; }

    /// <summary>Molar part, id and equation of each component.</summary>
    public IEnumerable<(double Part, string Id, HelmholtzEquation Equation)> Components => components.Zip(ids, (component, id) => (component.Part, id, component.Equation));

    /// <summary>Reads a blend; null where there is none of that id.</summary>
    /// <param name="id">Its id in <c>agents/blends.csv</c>.</param>
    public static HelmholtzBlend? Of(string id) =>
        CsvTable.Embedded("agents/blends.csv").Rows.Where(row => row.Text("id") == id).ToArray() is { Length: > 0 } rows ? new(rows) : null;

    /// <inheritdoc/>
    public HelmholtzDerivatives Residual(double density, double temperature)
    {
        HelmholtzDerivatives sum = default;
        foreach (var (part, equation) in components) sum += part * equation.Residual(density, temperature);
        return sum;
    }

    /// <inheritdoc/>
    /// <remarks>Each component at its own share of the density, which adds the entropy of mixing.</remarks>
    public HelmholtzDerivatives Ideal(double temperature)
    {
        double value = 0, slope = 0, bend = 0;
        foreach (var (part, equation) in components)
        {
            var scale = equation.ReducingTemperature / ReducingTemperature;
            var own = equation.Ideal(temperature * scale);
            var densityRatio = ReducingDensity / MolarMass / (equation.ReducingDensity / equation.MolarMass);
            value += part * (own.Value + Math.Log(part * densityRatio));
            slope += part * scale * own.ByTemperature;
            bend += part * scale * scale * own.ByTemperatureTwice;
        }
        return HelmholtzDerivatives.OfTemperature(value, slope, bend);
    }

    /// <inheritdoc/>
    public HelmholtzState At(double temperature, double density)
    {
        var (delta, tau) = (density / ReducingDensity, ReducingTemperature / temperature);
        return HelmholtzState.Of(GasConstant, temperature, density, delta, tau, Ideal(tau) + Residual(delta, tau));
    }

    // Molar volume, m³/mol, and temperature, K, that reduce the blend.
    (double Volume, double Temperature) Reduce()
    {
        double volume = 0, temperature = 0;
        for (var i = 0; i < ids.Length; i++)
        {
            var (x, first) = components[i];
            var firstVolume = first.MolarMass / first.ReducingDensity;
            volume += x * x * firstVolume;
            temperature += x * x * first.ReducingTemperature;
            for (var j = i + 1; j < ids.Length; j++)
            {
                var (y, second) = components[j];
                var pair = Pair(ids[i], ids[j]);
                var mean = Math.Pow(0.5 * (Math.Cbrt(firstVolume) + Math.Cbrt(second.MolarMass / second.ReducingDensity)), 3);
                volume += 2 * x * y * pair.BetaVolume * pair.GammaVolume * (x + y) / (pair.BetaVolume * pair.BetaVolume * x + y) * mean;
                temperature += 2 * x * y * pair.BetaTemperature * pair.GammaTemperature * (x + y) / (pair.BetaTemperature * pair.BetaTemperature * x + y)
                    * Math.Sqrt(first.ReducingTemperature * second.ReducingTemperature);
            }
        }
        return (volume, temperature);
    }

    // A pair told the other way round has the inverse β.
    static (double BetaVolume, double GammaVolume, double BetaTemperature, double GammaTemperature) Pair(string first, string second)
    {
        foreach (var row in CsvTable.Embedded("agents/blend-pairs.csv").Rows)
        {
            var isReversed = row.Text("first") == second && row.Text("second") == first;
            if (!isReversed && (row.Text("first") != first || row.Text("second") != second)) continue;
            var (betaVolume, betaTemperature) = (row.Number("beta_volume_coefficient"), row.Number("beta_temperature_coefficient"));
            return (isReversed ? 1 / betaVolume : betaVolume, row.Number("gamma_volume_coefficient"), isReversed ? 1 / betaTemperature : betaTemperature, row.Number("gamma_temperature_coefficient"));
        }
        throw new InvalidDataException($"No parameters of {first} with {second}.");
    }
}
