using System.Collections.Immutable;
using FlowCalc.ReferenceData;

namespace FlowCalc.Stock;

/// <summary>How long blade fuses of road vehicles hold and when they have opened.</summary>
/// <remarks>
/// Source: ISO 8820-3 (from memory). Between two currents of the table a fuse is sure to hold as long as the greater one lets it, and sure to have opened when the lesser one makes it:
/// no curve is drawn through the rows. Other fuses have no table here.
/// </remarks>
public static class FuseTimes
{
    static readonly ImmutableArray<(double Part, double Least, double? Most)> Rows =
        [.. CsvTable.Embedded("stock/fuse-times.csv").Rows.Select(row => (row.Number("current_percent") / 100, row.Number("least_s"), row.OptionalNumber("most_s")))];

    /// <summary>The time that a blade fuse is sure to hold.</summary>
    /// <param name="part">Current over rated current, 0 or more.</param>
    /// <returns>Time, s; infinite up to the rated current, 0 above the last current of the table.</returns>
    public static double Holds(double part)
    {
        if (part <= 1) return double.PositiveInfinity;
        foreach (var row in Rows)
            if (part <= row.Part) return row.Least;
        return 0;
    }

    /// <summary>The time after which a blade fuse is sure to have opened.</summary>
    /// <param name="part">Current over rated current, 0 or more.</param>
    /// <returns>Time, s; infinite below the first current for which the table has one.</returns>
    public static double Opens(double part)
    {
        var opens = double.PositiveInfinity;
        foreach (var row in Rows)
            if (part >= row.Part && row.Most is { } most) opens = most;
        return opens;
    }
}
