using System.Collections.Immutable;
using System.Reflection;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What the report is and for whom.</summary>
static class OpeningSection
{
    static readonly string Engine = typeof(Layout).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion.Split('+')[0] ?? "";

    public static ReportSection Of(ReportSource source)
    {
        var layout = source.Solved.Layout;
        var asks = source.Solved.Discharge is null ? "how much every nozzle gets" : "how much every nozzle gets, when and for how long";
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph(
            $"This report tells whoever plans, builds or inspects the line described in it what a calculation expects of it: {asks}, what stands against it, and what is cut and ordered to build it. " +
            "All numbers follow from the inputs printed here; if what is built differs from them, they no longer hold. Pressures are gauge. Numbers are rounded to three digits; the calculation is not."));
        if (layout.Note is { Length: > 0 } note) blocks.Add(new ReportParagraph($"Note of the planner: {note}"));
        return new("What this report is", blocks.ToImmutable());
    }

    public static ImmutableArray<(string, string)> Facts(ReportSource source)
    {
        var layout = source.Solved.Layout;
        return
        [
            ("Date", source.Date ?? ""),
            ("Prepared by", source.By ?? ""),
            ("Used in", Words(layout.Application)),
            ("Agent", layout.Agent.Title),
            ("Units", source.Solved.Units switch { UnitSystem.Metric => "metric", UnitSystem.Us => "US customary", _ => "SI" }),
            ("Worked out with", $"FlowCalc {Engine}"),
        ];
    }

    static string Words(Application application) => application switch
    {
        Application.General => "not stated",
        Application.Motorsport => "a competition vehicle",
        Application.MarineEngineSpace => "the engine space of a boat",
        Application.Machine => "a machine or its enclosure",
        Application.ElectricalCabinet => "an electrical cabinet",
        _ => throw new ArgumentOutOfRangeException(nameof(application), application, "No such application."),
    };
}
