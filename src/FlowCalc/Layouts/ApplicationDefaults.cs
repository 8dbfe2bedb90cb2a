using System.Collections.Immutable;
using FlowCalc.Layouts.Coverage;
using FlowCalc.ReferenceData;

namespace FlowCalc.Layouts;

/// <summary>What an application stands for where a document does not say; its requirement, load cases and rules of upkeep stand in tables beside it.</summary>
/// <param name="Application">The application.</param>
/// <param name="Id">Its word in documents; <c>general</c> where none is named.</param>
/// <param name="Title">Name for people.</param>
/// <param name="WorksAnyWayUp">Whether the system has to work in any position.</param>
/// <param name="Protection">How its zones are protected.</param>
/// <param name="LeastZones">Zones that need a nozzle at least; null where no rule says.</param>
/// <param name="Note">Why that.</param>
/// <param name="Sources">Keys into <see cref="SourceCatalogue"/>.</param>
public sealed record ApplicationDefaults(
    Application Application, string Id, string Title, bool WorksAnyWayUp, Protection Protection, int? LeastZones, string Note, ImmutableArray<string> Sources)
{
    /// <summary>All of them, in the order of <see cref="Layouts.Application"/>.</summary>
    public static ImmutableArray<ApplicationDefaults> All { get; } = [.. CsvTable.Embedded("applications/applications.csv").Rows.Select(Read)];

    /// <summary>The defaults of an application.</summary>
    /// <param name="application">The application.</param>
    /// <returns>Its row.</returns>
    public static ApplicationDefaults Of(Application application) => All[(int)application];

    /// <summary>Whose rule these are, in words.</summary>
    public string Source => string.Join("; ", Sources.Select(key => SourceCatalogue.Find(key) is { } source ? $"{source.Title} ({source.Access.TrimEnd('.')})" : key));

    static ApplicationDefaults Read(CsvRow row, int index) => new(
        (Application)index, row.Text("id"), row.Text("title"), row.Text("attitudes") == "any", row.Text("protection") == "flooding" ? Protection.Flooding : Protection.Local,
        row.OptionalNumber("least_count") is { } count ? (int)count : null, row.Text("note"), row.Sources);
}
