using System.Globalization;
using System.Text;

namespace FlowCalc.Benchmarks;

/// <summary>A bottle and a trunk with a tee for every nozzle but the last, as a layout document: bends, tees, rises and a valve.</summary>
internal static class CombDocument
{
    /// <summary>Writes the document: three temperatures and three attitudes.</summary>
    /// <param name="nozzles">Number of nozzles, 2 or more.</param>
    public static byte[] Of(int nozzles)
    {
        var text = new StringBuilder();
        text.Append("""
            { "format": 1, "agent": "water", "ambientPressure": "1.01325 bara",
              "supply": { "bottle": { "volume": "6 L", "fill": "4 kg", "chargePressure": "14 bar", "openingTime": "0.05 s",
                "shape": { "diameter": "140 mm", "length": "390 mm" }, "wall": { "material": "aluminium", "thickness": "3 mm" },
                "outlet": { "dipTube": { "bore": "12 mm", "length": "380 mm" }, "valveKv": "3 m3/h" } } },
              "cases": { "temperatures": ["5 °C", "20 °C", "60 °C"], "attitudes": [
                { "name": "upright", "gravity": [0, 0, -1] }, { "name": "braking", "gravity": [1, 0, -1] }, { "name": "left side", "gravity": [0, 1, 0] } ] },
              "points": [ { "id": "S", "kind": "supply" }
            """);
        for (var i = 1; i < nozzles; i++) Add(text, $$""", { "id": "T{{i}}", "kind": "tee", "fedThrough": "run", "body": "smooth" }""");
        for (var i = 1; i <= nozzles; i++)
            Add(text, $$""", { "id": "N{{i}}", "kind": "nozzle", "orifice": { "diameter": "{{1.2 + 0.01 * i}} mm", "dischargeCoefficient": 0.8 } }""");
        text.Append("], \"runs\": [");
        for (var i = 1; i < nozzles; i++)
        {
            Add(text, $$"""{ "from": "{{(i == 1 ? "S" : $"T{i - 1}")}}", "to": "T{{i}}", {{(i == 1 ? "" : "\"leaves\": \"run\", ")}}"bore": "8 mm", "roughness": "1.5 µm", "length": "{{0.4 + 0.03 * i}} m", "rise": "{{0.05 * (i % 3)}} m" }, """);
            Add(text, $$"""{ "from": "T{{i}}", "to": "N{{i}}", "leaves": "branch", "bore": "4 mm", "roughness": "1.5 µm", "length": "{{0.5 + 0.04 * i}} m", "rise": "0.2 m", "bends": [{ "angle": "90 °", "radius": "15 mm", "count": 2 }] }, """);
        }
        Add(text, $$"""{ "from": "T{{nozzles - 1}}", "to": "N{{nozzles}}", "leaves": "run", "bore": "4 mm", "roughness": "1.5 µm", "length": "0.8 m", "rise": "0.2 m", "bends": [{ "angle": "90 °", "radius": "15 mm", "count": 2 }] }] }""");
        return Encoding.UTF8.GetBytes(text.ToString());
    }

    static void Add(StringBuilder text, FormattableString piece) => text.Append(piece.ToString(CultureInfo.InvariantCulture));
}
