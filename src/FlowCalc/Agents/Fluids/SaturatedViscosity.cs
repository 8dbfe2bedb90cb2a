using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>Viscosity of a saturated liquid: ln μ along straight lines in 1/T between tabulated points, and on beyond the last two.</summary>
internal sealed class SaturatedViscosity
{
    readonly double[] inverse, log;

    SaturatedViscosity(IReadOnlyList<CsvRow> rows)
    {
        inverse = [.. rows.Select(row => 1 / row.Number("temperature_k"))];
        log = [.. rows.Select(row => Math.Log(1e-3 * row.Number("liquid_viscosity_mpa_s")))];
        Confidence = rows[0].Text("confidence");
    }

    /// <summary>How far to trust it: reference, fair or weak.</summary>
    public string Confidence { get; }

    /// <summary>Reads a fluid's table.</summary>
    /// <param name="id">The fluid.</param>
    public static SaturatedViscosity Of(string id) => new([.. CsvTable.Embedded("agents/saturated-viscosities.csv").Rows.Where(row => row.Text("id") == id)]);

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    public double At(double temperature)
    {
        var x = 1 / temperature;
        var i = 0;
        while (i < inverse.Length - 2 && x < inverse[i + 1]) i++;
        return Math.Exp(log[i] + (x - inverse[i]) / (inverse[i + 1] - inverse[i]) * (log[i + 1] - log[i]));
    }
}
