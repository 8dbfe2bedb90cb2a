using System.Globalization;
using System.Text;
using FlowCalc.Layouts;
using FlowCalc.Routes;

namespace FlowCalc.Tests.Routes;

/// <summary>Documents with one run from a supply to a nozzle, and what is cut of them.</summary>
static class RouteDocument
{
    /// <summary>A straight or bent run through places.</summary>
    /// <param name="places">Places in metres, the first and the last of them the ends.</param>
    /// <param name="radius">Bend radius, m.</param>
    /// <param name="point">Members of both points besides, each with a comma before it.</param>
    /// <param name="run">Members of the run besides, each with a comma before it.</param>
    /// <param name="rest">Members of the document besides, each with a comma before it.</param>
    /// <param name="tube">Members of the tube.</param>
    public static string Through(
        double[][] places, double radius, string point = "", string run = "", string rest = "",
        string tube = "\"outsideDiameter\": \"8 mm\", \"wall\": \"1 mm\", \"roughness\": \"1.5 µm\", \"material\": \"aluminium\"") => $$"""
        { "format": 1, "agent": "water", "ambientPressure": "1.01325 bara", "temperature": "20 °C", "supply": { "pressure": "12 bar" },
          "tubes": { "feed": { {{tube}} } },
          "points": [ { "id": "S", "kind": "supply", "at": {{Place(places[0])}}{{point}} },
                      { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": {{Place(places[^1])}}{{point}} } ],
          "runs": [ { "id": "R", "from": "S", "to": "N", "tube": "feed", "bendRadius": "{{Number(radius)}} m",
                      "via": [{{string.Join(", ", places[1..^1].Select(Place))}}]{{run}} } ]{{rest}} }
        """;

    /// <summary>A run given by its length.</summary>
    public static string Long(string length, string point = "", string run = "", string rest = "") => $$"""
        { "format": 1, "agent": "water", "ambientPressure": "1.01325 bara", "temperature": "20 °C", "supply": { "pressure": "12 bar" },
          "tubes": { "feed": { "outsideDiameter": "8 mm", "wall": "1 mm", "roughness": "1.5 µm", "material": "aluminium" } },
          "points": [ { "id": "S", "kind": "supply"{{point}} }, { "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5"{{point}} } ],
          "runs": [ { "id": "R", "from": "S", "to": "N", "tube": "feed", "length": "{{length}}"{{run}} } ]{{rest}} }
        """;

    public static Layout Read(string json)
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(json), null, TestContext.Current.CancellationToken);
        return reading.Layout ?? throw new InvalidOperationException($"{string.Join("; ", reading.Faults)} in {json}");
    }

    public static CutList Cut(string json) => CutList.Of(Read(json), TestContext.Current.CancellationToken);

    /// <summary>The one piece of the one run.</summary>
    public static TubePiece Piece(string json) => Assert.Single(Assert.Single(Cut(json).Runs).Pieces);

    static string Place(double[] place) => $"[{string.Join(", ", place.Select(part => $"\"{Number(part)} m\""))}]";

    static string Number(double number) => number.ToString("R", CultureInfo.InvariantCulture);
}
