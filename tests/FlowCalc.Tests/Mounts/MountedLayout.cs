using System.Text;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Mounts;
using FlowCalc.Quantities;
using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Mounts;

/// <summary>A small document with a mount, and ways to change it.</summary>
static class MountedLayout
{
    /// <summary>The bottle of the worked example: 7.5 kg at 80 mm over four M6 8.8 on 160 × 90 mm, in any direction at 25 g.</summary>
    public const string Mount = """
        { "normal": [0, 0, 1], "x": [1, 0, 0], "centreOfMass": ["0 mm", "0 mm", "80 mm"], "fullMass": "7.5 kg",
          "bolts": { "size": "M6", "class": "8.8", "rectangle": ["160 mm", "90 mm"] }, "loads": [{ "name": "any", "acceleration": 25 }] }
        """;

    /// <summary>A document with a mount; the bottle lies forward.</summary>
    public const string Json = """
        { "format": 1, "agent": "water", "ambientPressure": "1.01325 bara",
          "supply": { "bottle": { "volume": "4.2 L", "fill": "3.0 kg", "chargePressure": "14 bar", "axis": [1, 0, 0], "shape": { "diameter": "130 mm", "length": "316 mm" },
            "outlet": { "dipTube": { "bore": "10 mm", "roughness": "1.5 µm", "length": "308 mm" } } } },
          "points": [ { "id": "valve", "kind": "supply" }, { "id": "cab", "kind": "nozzle", "kFactor": "1.2 L/min/bar^0.5" } ],
          "runs": [ { "id": "feed", "from": "valve", "to": "cab", "bore": "4 mm", "roughness": "1.5 µm", "length": "2 m" } ],
          "mount":
        """ + Mount + " }";

    /// <summary>The document with values replaced, added or removed; pointers count from the document.</summary>
    public static string With(params (string Pointer, string? Value)[] edits) =>
        edits.Aggregate(Json, (json, edit) => Specimen.With(json, edit.Pointer, edit.Value));

    public static Layout Read(string json)
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(json), null, TestContext.Current.CancellationToken);
        return reading.Layout ?? throw new InvalidOperationException(string.Join("; ", reading.Faults));
    }

    public static MountResult Solve(params (string Pointer, string? Value)[] edits) => LayoutMount.Solve(Read(With(edits)), TestContext.Current.CancellationToken);

    public static MountJudgement Judge(string json, bool cures = false, UnitSystem units = UnitSystem.Metric)
    {
        var layout = Read(json);
        var result = LayoutMount.Solve(layout, TestContext.Current.CancellationToken);
        return cures ? MountFindings.JudgeWithCures(layout, result, units, TestContext.Current.CancellationToken) : MountFindings.Judge(layout, result, units, TestContext.Current.CancellationToken);
    }

    /// <summary>The worst of a kind of check.</summary>
    public static CheckResult Worst(this MountResult result, MountCheckKind kind) => result.Checks.Where(check => check.Kind == kind).MaxBy(check => check.Use)!;

    /// <summary>The case of a name.</summary>
    public static MountCase Case(this MountResult result, string name) => result.Cases.Single(one => one.Name == name);
}
