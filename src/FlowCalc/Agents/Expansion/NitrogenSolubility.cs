using FlowCalc.ReferenceData;

namespace FlowCalc.Agents;

/// <summary>How nitrogen dissolves in a liquefied agent: Henry's law with a constant that does not change with temperature.</summary>
/// <param name="Constant">Henry's constant, Pa: fugacity of nitrogen over its mole fraction in the liquid.</param>
/// <param name="MolarVolume">Volume that a mole of it takes up in the liquid, m³/mol.</param>
/// <param name="Confidence">How far to trust it: fair or weak.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
internal sealed record NitrogenSolubility(double Constant, double MolarVolume, string Confidence, IReadOnlyList<string> Sources)
{
    /// <summary>Of an agent; null where there is none.</summary>
    /// <param name="id">HFC-227ea, HFC-125, HFC-236fa or FK-5-1-12.</param>
    public static NitrogenSolubility? Of(string id)
    {
        foreach (var row in CsvTable.Embedded("agents/nitrogen-solubility.csv").Rows)
            if (row.Text("id") == id)
                return new(row.Number("henry_pa"), row.Number("molar_volume_m3_mol"), row.Text("confidence"), row.Sources);
        return null;
    }
}
