using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>How the bench cuts: the document's figures, and the usual ones for what it leaves open, which the log then lists.</summary>
sealed class Bench
{
    const string Usual = "common practice, no source";

    public Bench(Layout layout, AssumptionLog log)
    {
        var cutting = layout.Cutting;
        Kerf = Taken(cutting?.Kerf, 0.002, "kerf", "2 mm", $"{Usual}; a cutter wheel takes none", log);
        Squaring = Taken(cutting?.Squaring, 0.001, "squaring", "1 mm an end", Usual, log);
        if (cutting?.Spare is null) log.Add("/cutting/spare", "0.1", "a tenth for spoiled pieces, as a training text has it (seen second-hand)");
        Spare = cutting?.Spare ?? 0.1;
        Insertion = cutting?.Insertion;
    }

    /// <summary>Width of a cut, m.</summary>
    public double Kerf { get; }

    /// <summary>What squaring takes from an end, m.</summary>
    public double Squaring { get; }

    /// <summary>Part of the tube that is ordered besides, dimensionless.</summary>
    public double Spare { get; }

    /// <summary>Depth into fittings that do not state theirs; null where the document states none.</summary>
    public Length? Insertion { get; }

    static double Taken(Length? given, double usual, string field, string value, string source, AssumptionLog log)
    {
        if (given is null) log.Add($"/cutting/{field}", value, source);
        return given?.Meters ?? usual;
    }
}
