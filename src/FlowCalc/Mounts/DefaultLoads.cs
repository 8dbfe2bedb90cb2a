using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Mounts;
using FlowCalc.Layouts.Reading;
using FlowCalc.ReferenceData;

namespace FlowCalc.Mounts;

/// <summary>The load cases that hold where a document states none, by application.</summary>
public static class DefaultLoads
{
    static readonly ImmutableArray<(string Application, MountLoad Load, string Source)> All = [.. CsvTable.Embedded("mounts/load-cases.csv").Rows.Select(Read)];

    /// <summary>The load cases of an application.</summary>
    /// <param name="application">The application; the general ones where a document names none.</param>
    /// <returns>The cases with whose they are; at least one.</returns>
    public static ImmutableArray<(MountLoad Load, string Source)> For(Application application)
    {
        var word = DocumentReader.WordOf(application) ?? "general";
        return [.. All.Where(row => row.Application == word).Select(row => (row.Load, row.Source))];
    }

    static (string, MountLoad, string) Read(CsvRow row) =>
        (row.Text("application"), new MountLoad(row.Text("title"), row.Number("acceleration_g"), DirectionOf(row.Text("direction"))), row.Text("note").TrimEnd('.'));

    static Direction? DirectionOf(string text)
    {
        if (text == "any") return null;
        var parts = text.Split(' ');
        return new(Part(parts[0]), Part(parts[1]), Part(parts[2]));
    }

    static double Part(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
