using System.Text;
using System.Text.Json.Nodes;
using CsCheck;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Tests.Sheets;

/// <summary>Documents for laws of changes, and what they are measured by.</summary>
static class Documents
{
    /// <summary>Two lengths that were each rounded to a tenth of a millimetre, m.</summary>
    public const double Rounding = 0.0002;

    const int Tried = 150;

    /// <summary>The document of an example.</summary>
    public static string Example(string name) => Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);

    /// <summary>Holds a law over all examples and many grown layouts. Both read without faults, or the law would hold of nothing.</summary>
    public static void All(Action<Sheet> law)
    {
        foreach (var example in ExampleCatalogue.All) law(Sound(Example(example.Name)));
        GrownLayout.Any.Sample(text => law(Sound(text)), iter: Tried, threads: 1);
    }

    /// <summary>The sheet after a change, without faults.</summary>
    public static Sheet Changed(Sheet sheet, Action<JsonObject> change) => Sound(sheet.With(change).Text);

    /// <summary>A sheet without faults.</summary>
    public static Sheet Sound(string text)
    {
        var sheet = Sheet.Of(text, TestContext.Current.CancellationToken);
        Assert.True(sheet.Faults.Count == 0, string.Join('\n', sheet.Faults.Select(fault => $"{fault.Pointer}: {fault.Message}")) + "\n" + text);
        return sheet;
    }

    /// <summary>Length of all tube, m.</summary>
    public static double Length(Layout layout) => layout.Runs.Sum(run => run.Length.Meters);

    /// <summary>Names of the nozzles, sorted.</summary>
    public static string[] Nozzles(Layout layout) => [.. layout.Points.OfType<Nozzle>().Select(nozzle => nozzle.Id).Order(StringComparer.Ordinal)];

    /// <summary>Index of a run by its name.</summary>
    public static int Run(Layout layout, string id) => Enumerable.Range(0, layout.Runs.Length).Single(run => layout.Runs[run].Id == id);

    /// <summary>What is left of a document without some of its points and runs, by their names; runs without a name go by their ends.</summary>
    public static JsonObject Without(Sheet sheet, params IEnumerable<string> names)
    {
        var (root, gone) = (JsonNode.Parse(sheet.Text)!.AsObject(), names.ToHashSet(StringComparer.Ordinal));
        foreach (var list in (string[])["points", "runs"])
        {
            var ids = sheet.IdsOf(list);
            for (var at = ids.Count - 1; at >= 0; at--)
                if (gone.Contains(ids[at])) root[list]!.AsArray().RemoveAt(at);
        }
        return root;
    }
}
