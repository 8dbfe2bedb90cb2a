using System.Globalization;
using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>A small sound document with every kind of point, and ways to spoil it in one place.</summary>
public static class Specimen
{
    /// <summary>The document: seven points, its runs given by their lengths.</summary>
    public const string Json = """
        {
          "format": 1,
          "title": "Specimen",
          "agent": "water",
          "ambientPressure": "1.01325 bara",
          "temperature": "20 °C",
          "supply": {
            "bottle": {
              "volume": "4 L", "fill": "3 kg", "chargePressure": "14 bar", "chargeTemperature": "20 °C", "cushionGas": "nitrogen",
              "outlet": { "dipTube": { "bore": "10 mm", "roughness": "1.5 µm", "length": "300 mm" }, "valveKv": "2.4 m3/h" }
            }
          },
          "zones": { "left": { "share": 0.5 }, "right": { "occupied": true } },
          "tubes": {
            "trunk": { "outsideDiameter": "10 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "30 mm", "workingPressure": "60 bar" },
            "thin": { "bore": "4 mm", "roughness": "1.5 µm" }
          },
          "nozzles": {
            "fan": { "kFactor": "1.5 L/min/bar^0.5", "pressureRange": ["3 bar", "16 bar"] },
            "jet": { "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.8, "count": 2 } }
          },
          "fittings": { "panel": { "kind": "bulkhead-union", "bore": "5 mm", "length": "40 mm" } },
          "points": [
            { "id": "bottle", "kind": "supply" },
            { "id": "tee", "kind": "tee", "fedThrough": "run", "body": "smooth" },
            { "id": "step", "kind": "reducer" },
            { "id": "first", "kind": "nozzle", "nozzle": "fan", "zone": "left" },
            { "id": "fork", "kind": "junction" },
            { "id": "second", "kind": "nozzle", "nozzle": "jet", "zone": "right" },
            { "id": "end", "kind": "cap" }
          ],
          "runs": [
            { "id": "main", "from": "bottle", "to": "tee", "tube": "trunk", "length": "1 m", "rise": "-0.4 m", "bends": [{ "angle": "90 °", "radius": "40 mm", "count": 2 }] },
            { "from": "tee", "to": "step", "leaves": "run", "tube": "trunk", "length": "0.5 m", "fittings": [{ "fitting": "panel", "at": "0.2 m" }] },
            { "from": "step", "to": "first", "tube": "thin", "length": "0.3 m" },
            { "from": "tee", "to": "fork", "leaves": "branch", "bore": "6 mm", "roughness": "1.5 µm", "length": "0.6 m" },
            { "from": "fork", "to": "second", "tube": "thin", "length": "0.3 m" },
            { "from": "fork", "to": "end", "tube": "thin", "length": "0.1 m" }
          ]
        }
        """;

    /// <summary>Reads a document.</summary>
    public static LayoutReading Read(string json, LayoutReaderOptions? options = null) =>
        LayoutReader.Read(Encoding.UTF8.GetBytes(json), options, TestContext.Current.CancellationToken);

    /// <summary>A document with one value replaced, added (its last segment may be new, or <c>-</c> at a list's end), or with null removed.</summary>
    public static string With(string json, string pointer, string? value)
    {
        var root = JsonNode.Parse(json)!;
        var segments = pointer.Split('/')[1..];
        var owner = root;
        foreach (var segment in segments[..^1])
            owner = owner is JsonArray list ? list[int.Parse(segment, CultureInfo.InvariantCulture)]! : owner[segment]!;
        Set(owner, segments[^1], value);
        return root.ToJsonString();
    }

    /// <summary>The specimen with some values replaced, added or removed.</summary>
    public static string With(params (string Pointer, string? Value)[] edits) =>
        edits.Aggregate(Json, (json, edit) => With(json, edit.Pointer, edit.Value));

    /// <summary>Asserts that a document has one fault, at a place and with words in its message; so nothing else was invented.</summary>
    public static void HasOneFault(string json, string pointer, string words)
    {
        var reading = Read(json);

        var fault = Assert.Single(reading.Faults);
        Assert.Equal(pointer, fault.Pointer);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
        Assert.Null(reading.Layout);
    }

    static void Set(JsonNode owner, string last, string? value)
    {
        if (owner is JsonArray list)
        {
            if (last == "-") list.Add(JsonNode.Parse(value!));
            else if (value is null) list.RemoveAt(int.Parse(last, CultureInfo.InvariantCulture));
            else list[int.Parse(last, CultureInfo.InvariantCulture)] = JsonNode.Parse(value);
        }
        else if (value is null) owner.AsObject().Remove(last);
        else owner[last] = JsonNode.Parse(value);
    }
}
