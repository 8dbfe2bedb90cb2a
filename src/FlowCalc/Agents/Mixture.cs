using System.Globalization;
using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>One mixture of the catalogue with its correlation.</summary>
internal sealed class Mixture
{
    readonly MixtureCorrelation correlation;

    Mixture(CsvRow row, IEnumerable<CsvRow> coefficients)
    {
        correlation = new(row, coefficients);
        var (lowest, highest) = (row.Number("lowest_mass_fraction"), row.Number("highest_mass_fraction"));
        var steps = (int)Math.Round((highest - lowest) / 0.05);
        Info = new(
            row.Text("id"), row.Text("title"), lowest, highest, correlation.FreezingPoint(highest), correlation.HighestTemperature,
            [.. Enumerable.Range(0, steps + 1).Select(step => FreezingPointAt(Math.Round(lowest + 0.05 * step, 2)))], row.Sources);
    }

    /// <summary>What the catalogue says of it.</summary>
    public MixtureInfo Info { get; }

    /// <summary>Reads all mixtures.</summary>
    public static IEnumerable<Mixture> ReadAll()
    {
        var coefficients = CsvTable.Embedded("agents/mixture-coefficients.csv").Rows.ToLookup(row => row.Text("mixture"), StringComparer.Ordinal);
        return CsvTable.Embedded("agents/mixtures.csv").Rows.Select(row => new Mixture(row, coefficients[row.Text("id")]));
    }

    /// <summary>Whether the data reach a mass fraction.</summary>
    public bool Covers(double massFraction) => massFraction >= Info.LowestMassFraction && massFraction <= Info.HighestMassFraction;

    /// <summary>The agent of one mass fraction, which the data reach.</summary>
    public LiquidAgent At(double massFraction) => new(
        Info.Id, string.Create(CultureInfo.InvariantCulture, $"{Info.Title}, {100 * massFraction:0.##} % by mass"), correlation.FreezingPoint(massFraction),
        "Vapour pressure is that of pure water, an upper bound.", Info.Sources, new MixtureProperties(correlation, massFraction));

    SolutionFreezingPoint FreezingPointAt(double massFraction) => new(massFraction, correlation.FreezingPoint(massFraction));
}
