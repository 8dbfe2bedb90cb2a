using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.ReferenceData;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>How long anybody may be in a concentration.</summary>
/// <param name="Time">Longest time; 0 for not at all.</param>
/// <param name="Source">Whose rule it is.</param>
public sealed record ExposureBand(Duration Time, string Source)
{
    static readonly ImmutableArray<CsvRow> Rows = CsvTable.Embedded("agents/exposure.csv").Rows;

    /// <summary>The band of a concentration.</summary>
    /// <param name="agent">The agent.</param>
    /// <param name="concentration">Its concentration, 0 to 1.</param>
    /// <returns>Over the lowest concentration with harm seen no time; null where no rule is known, as between the two figures where the upper is not known.</returns>
    public static ExposureBand? Of(ExpandingAgent agent, double concentration)
    {
        ArgumentNullException.ThrowIfNull(agent);
        switch (agent.People)
        {
            case "never":
                return new(Duration.Zero, "common rule of every code known to us (from memory)");
            case "oxygen":
                return Read(Rows.Last(row => row.Text("kind") == "inert" && (concentration * 100 > row.Number("over_percent") || row.Number("over_percent") == 0)));
            default:
                if (concentration > agent.LowestHarmful) return new(Duration.Zero, "the agent's lowest concentration with harm seen");
                return concentration > agent.HighestUnharmed && agent.LowestHarmful is null ? null : Read(Rows.First(row => row.Text("kind") == "halocarbon"));
        }
    }

    static ExposureBand Read(CsvRow row)
    {
        var source = SourceCatalogue.Find(row.Sources[0])!;
        return new(Duration.FromSeconds(row.Number("most_s")), $"{source.Title} ({source.Access.TrimEnd('.')}): {row.Text("note").TrimEnd('.')}");
    }
}
