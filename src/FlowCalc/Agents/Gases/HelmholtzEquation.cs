using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>
/// A fundamental equation in the Helmholtz energy: a(T, ρ)/(R·T) = ln δ + α°(τ) + αʳ(δ, τ), from which every property follows by derivatives.
/// </summary>
internal sealed class HelmholtzEquation : IFluidEquation
{
    readonly ImmutableArray<HelmholtzTerm> ideal;
    readonly ImmutableArray<HelmholtzTerm> residual;
    readonly double gasConstant;

    HelmholtzEquation(CsvRow gas, IEnumerable<CsvRow> terms, IEnumerable<CsvRow> critical)
    {
        Title = gas.Text("title");
        MolarMass = gas.Number("molar_mass_kg_mol");
        gasConstant = gas.Number("gas_constant_j_mol_k");
        ReducingTemperature = gas.Number("reducing_temperature_k");
        ReducingDensity = gas.Number("reducing_density_mol_m3") * MolarMass;
        Sources = gas.Sources;
        var all = terms.ToLookup(row => row.Text("kind").StartsWith("ideal", StringComparison.Ordinal), HelmholtzTerm.Of);
        (ideal, residual) = ([.. all[true]], [.. all[false], .. critical.Select(CriticalTerm.Of)]);
        AcentricFactor = gas.Number("acentric_coefficient");
        (LowestTemperature, HighestTemperature) = (gas.Number("lowest_temperature_k"), gas.Number("highest_temperature_k"));
    }

    /// <summary>Name for people.</summary>
    public string Title { get; }

    /// <summary>Molar mass, kg/mol.</summary>
    public double MolarMass { get; }

    /// <summary>Specific gas constant of the equation, J/(kg·K).</summary>
    public double GasConstant => gasConstant / MolarMass;

    /// <summary>Temperature that reduces τ, K.</summary>
    public double ReducingTemperature { get; }

    /// <summary>Density that reduces δ, kg/m³.</summary>
    public double ReducingDensity { get; }

    /// <summary>Acentric factor, dimensionless.</summary>
    public double AcentricFactor { get; }

    /// <summary>Lowest temperature of the equation, K: the triple point.</summary>
    public double LowestTemperature { get; }

    /// <summary>Highest temperature of the equation, K.</summary>
    public double HighestTemperature { get; }

    /// <summary>Keys into the table of sources.</summary>
    public ImmutableArray<string> Sources { get; }

    /// <summary>Reads the equation of a gas.</summary>
    /// <param name="id">Its id in <c>agents/fluids.csv</c>.</param>
    public static HelmholtzEquation Of(string id) => new(
        CsvTable.Embedded("agents/fluids.csv").Rows.Single(row => row.Text("id") == id),
        CsvTable.Embedded("agents/fluid-terms.csv").Rows.Where(row => row.Text("id") == id),
        CsvTable.Embedded("agents/critical-terms.csv").Rows.Where(row => row.Text("id") == id));

    /// <summary>αʳ and its derivatives.</summary>
    /// <param name="density">δ, over 0.</param>
    /// <param name="temperature">τ, over 0.</param>
    public HelmholtzDerivatives Residual(double density, double temperature) => Sum(residual, density, temperature);

    /// <summary>α° without ln δ, and its derivatives by τ.</summary>
    /// <param name="temperature">τ, over 0.</param>
    public HelmholtzDerivatives Ideal(double temperature) => Sum(ideal, 1, temperature);

    /// <summary>All properties of a state.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    /// <param name="density">Density, kg/m³, over 0.</param>
    public HelmholtzState At(double temperature, double density)
    {
        var (delta, tau) = (density / ReducingDensity, ReducingTemperature / temperature);
        return HelmholtzState.Of(GasConstant, temperature, density, delta, tau, Ideal(tau) + Residual(delta, tau));
    }

    static HelmholtzDerivatives Sum(ImmutableArray<HelmholtzTerm> terms, double density, double temperature)
    {
        HelmholtzDerivatives sum = default;
        foreach (var term in terms) sum += term.At(density, temperature);
        return sum;
    }
}
