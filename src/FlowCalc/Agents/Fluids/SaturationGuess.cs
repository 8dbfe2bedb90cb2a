using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>A short formula for a saturated property, good to about a per cent: where the search for equilibrium starts.</summary>
internal sealed class SaturationGuess
{
    readonly string form;
    readonly double reducingTemperature, reducingValue;
    readonly ImmutableArray<(double N, double T)> terms;

    SaturationGuess(IReadOnlyList<CsvRow> rows)
    {
        form = rows[0].Text("form");
        (reducingTemperature, reducingValue) = (rows[0].Number("reducing_temperature_k"), rows[0].Number("reducing_value_coefficient"));
        terms = [.. rows.Select(row => (row.Number("n_coefficient"), row.Number("temperature_power")))];
    }

    /// <summary>Reads one.</summary>
    /// <param name="id">The fluid.</param>
    /// <param name="quantity">pressure (Pa), liquid-density or vapour-density (mol/m³).</param>
    public static SaturationGuess Of(string id, string quantity) =>
        new([.. CsvTable.Embedded("agents/saturation-guesses.csv").Rows.Where(row => row.Text("id") == id && row.Text("quantity") == quantity)]);

    /// <summary>The property, in the table's unit.</summary>
    /// <param name="temperature">Temperature, K, below the critical one.</param>
    /// <exception cref="InvalidDataException">The table names a form that there is not.</exception>
    public double At(double temperature)
    {
        var theta = 1 - temperature / reducingTemperature;
        double sum = 0;
        foreach (var (n, t) in terms) sum += n * Math.Pow(theta, t);
        return form switch
        {
            "linear" => reducingValue * (1 + sum),
            "exp" => reducingValue * Math.Exp(sum),
            "exp-tau" => reducingValue * Math.Exp(reducingTemperature / temperature * sum),
            _ => throw new InvalidDataException($"'{form}' is no form of a guess."),
        };
    }
}
