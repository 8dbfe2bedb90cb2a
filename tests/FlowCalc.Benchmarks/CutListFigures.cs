using System.Globalization;
using System.Text;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Routes;

namespace FlowCalc.Benchmarks;

/// <summary>Time of a cut list in the library: read, cut, packed, clipped and judged.</summary>
internal static class CutListFigures
{
    /// <summary>Runs of the document.</summary>
    public const int Runs = 50;

    public static void Print()
    {
        var body = Document();
        QuickFigures.Line($"cut-list-{Runs}", QuickFigures.Time(() =>
        {
            var layout = LayoutReader.Read(body).Layout ?? throw new InvalidOperationException("The document has faults.");
            var list = CutList.Of(layout);
            if (CutListFindings.Judge(layout, list, UnitSystem.Metric, CancellationToken.None).Verdict == Severity.Fail) throw new InvalidOperationException("The layout fails.");
        }));
    }

    /// <summary>A trunk with a tee every half metre or so, a reducer at its end, and a drop of four bends from each, with places, joints and stock.</summary>
    public static byte[] Document(int runs = Runs)
    {
        var tees = runs / 2;
        var text = new StringBuilder("""
            { "format": 1, "agent": "water", "ambientPressure": "1.01325 bara", "supply": { "pressure": "12 bar" },
              "tubes": { "trunk": { "outsideDiameter": "10 mm", "wall": "1 mm", "minimumBendRadius": "35 mm", "material": "aluminium" },
                         "drop": { "outsideDiameter": "6 mm", "wall": "1 mm", "minimumBendRadius": "20 mm", "material": "stainless steel" } },
              "cutting": { "stock": [{ "lengths": ["2 m", "3 m"] }, { "tube": "drop", "lengths": ["3 m"] }], "kerf": "2 mm", "squaring": "1 mm" },
              "points": [ { "id": "S", "kind": "supply", "insertion": "14 mm", "at": ["0 m", "0 m", "0 m"] }
            """);
        for (var i = 1; i <= tees; i++)
        {
            var kind = i < tees ? "\"tee\", \"fedThrough\": \"run\", \"body\": \"smooth\"" : "\"reducer\"";
            Add(text, $$""", { "id": "T{{i}}", "kind": {{kind}}, "centreToStop": "11 mm", "at": ["{{0.55 * i}} m", "0 m", "{{0.02 * (i % 3)}} m"] }""");
            Add(text, $$""", { "id": "N{{i}}", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "insertion": "10 mm", "at": ["{{0.55 * i + 0.2}} m", "{{0.4 + 0.01 * i}} m", "0.5 m"] }""");
        }
        text.Append("], \"runs\": [");
        for (var i = 1; i <= tees; i++)
        {
            var z = 0.02 * (i % 3);
            Add(text, $$"""{ "from": "{{(i == 1 ? "S" : $"T{i - 1}")}}", "to": "T{{i}}", {{(i == 1 ? "" : "\"leaves\": \"run\", ")}}"tube": "trunk", "via": [["{{0.55 * i - 0.3}} m", "0.03 m", "{{z}} m"]] }, """);
            Add(text, $$"""{ "from": "T{{i}}", "to": "N{{i}}", {{(i < tees ? "\"leaves\": \"branch\", " : "")}}"tube": "drop", "via": [["{{0.55 * i}} m", "0.3 m", "{{z}} m"], ["{{0.55 * i + 0.2}} m", "0.3 m", "{{z}} m"], ["{{0.55 * i + 0.2}} m", "{{0.4 + 0.01 * i}} m", "{{z}} m"]] }, """);
        }
        return Encoding.UTF8.GetBytes(text.ToString().TrimEnd(' ', ',') + "] }");
    }

    static void Add(StringBuilder text, FormattableString piece) => text.Append(piece.ToString(CultureInfo.InvariantCulture));
}
