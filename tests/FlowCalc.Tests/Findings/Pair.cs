namespace FlowCalc.Tests.Findings;

/// <summary>Two equal nozzles on two equal legs of a tee: a document on which nothing is found, and edits of it.</summary>
static class Pair
{
    public const string Json = """
        {
          "format": 1,
          "agent": "water",
          "ambientPressure": "1 bara",
          "temperature": "20 °C",
          "supply": { "pressure": "8 bar" },
          "tubes": {
            "trunk": { "outsideDiameter": "10 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "35 mm" },
            "feed":  { "outsideDiameter": "8 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "28 mm" },
            "drop":  { "outsideDiameter": "5 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "18 mm" }
          },
          "points": [
            { "id": "source", "kind": "supply" },
            { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "left", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 } },
            { "id": "right", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 } }
          ],
          "runs": [
            { "id": "A", "from": "source", "to": "T", "tube": "trunk", "length": "1 m" },
            { "id": "L", "from": "T", "to": "left", "tube": "feed", "length": "1 m" },
            { "id": "R", "from": "T", "to": "right", "tube": "feed", "length": "1 m" }
          ]
        }
        """;

    /// <summary>The run to the right in the thin tube, long enough to starve its nozzle.</summary>
    public const string LongThinRight = """ "to": "right", "tube": "drop", "length": "2 m" """;

    public const string Right = """ "to": "right", "tube": "feed", "length": "1 m" """;

    /// <summary>The document with one piece of text exchanged for another; the piece has to be there.</summary>
    public static string With(string from, string to) => Edit(Json, from, to);

    public static string Edit(string json, string from, string to)
    {
        Assert.Contains(from.Trim(), json, StringComparison.Ordinal);
        return json.Replace(from.Trim(), to.Trim(), StringComparison.Ordinal);
    }

    /// <summary>The pair laid out in space, with two corners in each leg.</summary>
    /// <param name="right">The tube to the right.</param>
    /// <param name="stated">Its bend radius; null for none, so that the tube's least radius is taken.</param>
    /// <param name="least">Least bend radius of <c>feed</c>; null for none.</param>
    /// <param name="left">Bend radius to the left; null for none.</param>
    public static string Routed(string right, string? stated = null, string? least = "28 mm", string? left = null) => $$"""
        {
          "format": 1, "agent": "water", "ambientPressure": "1 bara", "temperature": "20 °C", "supply": { "pressure": "8 bar" },
          "tubes": {
            "feed": { "outsideDiameter": "8 mm", "wall": "1 mm", "roughness": "1.5 µm"{{(least is null ? "" : $", \"minimumBendRadius\": \"{least}\"")}} },
            "drop": { "outsideDiameter": "5 mm", "wall": "1 mm", "roughness": "1.5 µm", "minimumBendRadius": "18 mm" }
          },
          "points": [
            { "id": "source", "kind": "supply", "at": ["0 m", "0 m", "0 m"] },
            { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth", "at": ["1 m", "0 m", "0 m"] },
            { "id": "left", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 }, "at": ["2 m", "1 m", "0.5 m"] },
            { "id": "right", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 }, "at": ["2 m", "-1 m", "0.5 m"] }
          ],
          "runs": [
            { "id": "A", "from": "source", "to": "T", "tube": "feed" },
            { "id": "L", "from": "T", "to": "left", "tube": "feed"{{Radius(left)}}, "via": [["1 m", "1 m", "0 m"], ["2 m", "1 m", "0 m"]] },
            { "id": "R", "from": "T", "to": "right", "tube": "{{right}}"{{Radius(stated)}}, "via": [["1 m", "-1 m", "0 m"], ["2 m", "-1 m", "0 m"]] }
          ]
        }
        """;

    static string Radius(string? radius) => radius is null ? "" : $", \"bendRadius\": \"{radius}\"";
}
