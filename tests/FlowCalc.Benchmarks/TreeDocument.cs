using System.Text.Encodings.Web;
using System.Text.Json;

namespace FlowCalc.Benchmarks;

/// <summary>A random tree as a layout document.</summary>
internal static class TreeDocument
{
    /// <summary>Writes the document.</summary>
    /// <param name="tree">The tree.</param>
    /// <param name="shares">Wanted share of each point's nozzle; null for none, so that K-factors decide and starved nozzles are found.</param>
    public static byte[] Of(RandomTree tree, double[]? shares = null)
    {
        var buffer = new MemoryStream();
        // As people write it: ° and µ stand for themselves.
        using (var json = new Utf8JsonWriter(buffer, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
        {
            json.WriteStartObject();
            json.WriteNumber("format", 1);
            json.WriteString("agent", "water");
            json.WriteString("ambientPressure", "1.01325 bara");
            json.WriteString("temperature", "20 °C");
            json.WriteStartObject("supply");
            json.WriteString("pressure", "12 bar");
            json.WriteEndObject();
            json.WriteStartArray("points");
            for (var j = 0; j < tree.Parent.Length; j++) Point(json, tree, j, shares);
            json.WriteEndArray();
            json.WriteStartArray("runs");
            var taken = new int[tree.Parent.Length];
            for (var j = 1; j < tree.Parent.Length; j++) Run(json, tree, j, taken[tree.Parent[j]]++ == 0);
            json.WriteEndArray();
            json.WriteEndObject();
        }
        return buffer.ToArray();
    }

    static void Point(Utf8JsonWriter json, RandomTree tree, int j, double[]? shares)
    {
        var isTee = tree.HasTees && tree.Children[j] == 2;
        json.WriteStartObject();
        json.WriteString("id", $"P{j}");
        json.WriteString("kind", j == 0 ? "supply" : tree.Children[j] == 0 ? "nozzle" : isTee ? "tee" : "junction");
        if (j > 0 && tree.Children[j] == 0)
        {
            json.WriteStartObject("orifice");
            Quantity(json, "diameter", tree.NozzleDiameter[j] * 1e3, "mm");
            json.WriteNumber("dischargeCoefficient", RandomTree.DischargeCoefficient);
            json.WriteEndObject();
            if (shares is not null) json.WriteNumber("share", shares[j]);
        }
        else if (j > 0 && isTee)
        {
            json.WriteString("fedThrough", "run");
            json.WriteString("body", "smooth");
        }
        json.WriteEndObject();
    }

    static void Run(Utf8JsonWriter json, RandomTree tree, int j, bool isFirst)
    {
        var above = tree.Parent[j];
        json.WriteStartObject();
        json.WriteString("id", $"R{j}");
        json.WriteString("from", $"P{above}");
        json.WriteString("to", $"P{j}");
        if (tree.HasTees && above > 0 && tree.Children[above] == 2) json.WriteString("leaves", isFirst ? "run" : "branch");
        Quantity(json, "bore", tree.Bore[j] * 1e3, "mm");
        Quantity(json, "roughness", RandomTree.Roughness * 1e6, "µm");
        Quantity(json, "length", tree.Length[j], "m");
        if (tree.HasTees)
        {
            json.WriteStartArray("bends");
            json.WriteStartObject();
            Quantity(json, "angle", tree.BendDegrees[j], "°");
            Quantity(json, "radius", 3e3 * tree.Bore[j], "mm");
            json.WriteNumber("count", 1);
            json.WriteEndObject();
            json.WriteEndArray();
        }
        else json.WriteNumber("lossCoefficient", tree.LossCoefficient[j]);
        json.WriteEndObject();
    }

    static void Quantity(Utf8JsonWriter json, string name, double value, string unit) =>
        json.WriteString(name, FormattableString.Invariant($"{Math.Round(value, 9):R} {unit}"));
}
