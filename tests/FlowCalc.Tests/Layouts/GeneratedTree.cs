using System.Globalization;

namespace FlowCalc.Tests.Layouts;

/// <summary>Builds one generated document.</summary>
sealed class GeneratedTree(Tape tape, int mostPoints)
{
    readonly List<string> points = [], runs = [];
    readonly Queue<OpenEnd> open = new();
    readonly bool isPlaced = tape.Once(2);
    int nozzles;

    public GeneratedLayout Build()
    {
        points.Add(Point("p0", "\"kind\": \"supply\"", new Spot(0, 0, 0)));
        open.Enqueue(new OpenEnd("p0", new Spot(0, 0, 0), null));
        while (open.TryDequeue(out var end)) Grow(end);
        var json = $$"""
            {
              "format": 1, "title": "Generated", "agent": {{GeneratedParts.Agent(tape)}}, "temperature": {{GeneratedParts.Quantity(tape, 278, 310, "K")}},
              "supply": {{GeneratedParts.Supply(tape)}},
              "zones": { "A": { "share": 0.4 }, "B": { "occupied": true, "note": "no share" } },
              "tubes": {
                "wide": { "outsideDiameter": "10 mm", "wall": "1 mm", "minimumBendRadius": "35 mm", "workingPressure": "60 bar" },
                "thin": { "bore": "4 mm", "roughness": "2 µm", "minimumBendRadius": "18 mm", "material": "copper" }
              },
              "nozzles": { "cone": { "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.82 }, "pressureRange": ["1 bar", "20 bar"] }, "fan": { "kFactor": "1.2 L/min/bar^0.5" } },
              "fittings": { "panel": { "kind": "bulkhead-union", "bore": "3.5 mm", "length": "40 mm" }, "valve": { "kind": "valve", "kv": "1.8 m3/h" } },
              "points": [{{string.Join(", ", points)}}],
              "runs": [{{string.Join(", ", runs)}}]
            }
            """;
        return new GeneratedLayout(json, points.Count, isPlaced);
    }

    void Grow(OpenEnd end)
    {
        var id = $"p{points.Count}";
        var spot = GeneratedWay.Next(tape, end.Spot);
        runs.Add(GeneratedWay.Run(tape, end.Id, id, end.Port, isPlaced, end.Spot, spot));
        var room = mostPoints - points.Count - open.Count;
        var kind = room >= 2 ? tape.Below(6) : tape.Once(8) ? 5 : 4;
        switch (kind)
        {
            case 0:
                points.Add(Point(id, $"\"kind\": \"tee\", \"fedThrough\": \"run\"{Body()}", spot));
                var isRunFirst = tape.Once(2);
                open.Enqueue(new OpenEnd(id, spot, isRunFirst ? "run" : "branch"));
                open.Enqueue(new OpenEnd(id, spot, isRunFirst ? "branch" : "run"));
                break;
            case 1:
                points.Add(Point(id, $"\"kind\": \"tee\", \"fedThrough\": \"branch\"{Body()}", spot));
                open.Enqueue(new OpenEnd(id, spot, null));
                open.Enqueue(new OpenEnd(id, spot, null));
                break;
            case 2:
                points.Add(Point(id, "\"kind\": \"reducer\"", spot));
                open.Enqueue(new OpenEnd(id, spot, null));
                break;
            case 3:
                points.Add(Point(id, "\"kind\": \"junction\"", spot));
                for (var i = 0; i <= tape.Below(2); i++) open.Enqueue(new OpenEnd(id, spot, null));
                break;
            case 5 when nozzles > 0:
                points.Add(Point(id, "\"kind\": \"cap\"", spot));
                break;
            default:
                // The first end is always a nozzle, so that something is discharged.
                nozzles++;
                // The first nozzle is in the zone that wants a share.
                points.Add(Point(id, $"\"kind\": \"nozzle\", {GeneratedParts.Nozzle(tape)}, \"zone\": \"{(nozzles == 1 ? "A" : tape.Of("A", "B"))}\"", spot));
                break;
        }
    }

    string Body() => tape.Of("", ", \"body\": \"smooth\"", ", \"body\": \"threaded\"");

    string Point(string id, string rest, Spot spot) =>
        $$"""{ "id": "{{id}}", {{rest}}{{(isPlaced ? $", \"at\": {spot}" : "")}}{{tape.Of("", "", ", \"note\": \"n\"")}} }""";

    readonly record struct OpenEnd(string Id, Spot Spot, string? Port);
}

/// <summary>A place, m.</summary>
readonly record struct Spot(double X, double Y, double Z)
{
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"[\"{X:0.###} m\", \"{Y * 1e3:0} mm\", \"{Z:0.###} m\"]");
}
