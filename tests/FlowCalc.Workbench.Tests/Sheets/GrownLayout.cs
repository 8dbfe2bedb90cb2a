using System.Globalization;
using System.Text.Json.Nodes;
using CsCheck;

namespace FlowCalc.Workbench.Tests.Sheets;

/// <summary>Layout documents grown at random: trees with tees of both kinds, reducers, junctions, caps, bends, corners, rises and fittings, laid by length or by places.</summary>
sealed class GrownLayout
{
    const int Deepest = 4;

    readonly JsonArray points = [], runs = [];
    readonly Queue<int> choices;
    readonly bool isPlaced;
    int nozzles;

    GrownLayout(IEnumerable<int> choices, bool isPlaced) => (this.choices, this.isPlaced) = (new(choices), isPlaced);

    /// <summary>Any such document.</summary>
    public static Gen<string> Any => Gen.Select(Gen.Int[0, 999].Array[4, 60], Gen.Bool, (choices, isPlaced) => new GrownLayout(choices, isPlaced).Text());

    string Text()
    {
        points.Add(Point("bottle", "supply", (0, 0, 0)));
        Grow("bottle", (0, 0, 0), (0, 0, 1), null, "wide", 0);
        var root = new JsonObject
        {
            ["format"] = 1,
            ["agent"] = "water",
            ["supply"] = new JsonObject { ["pressure"] = "12 bar" },
            ["tubes"] = JsonNode.Parse("""{ "wide": { "bore": "8 mm", "minimumBendRadius": "24 mm" }, "thin": { "bore": "5 mm", "minimumBendRadius": "24 mm" } }"""),
            ["nozzles"] = JsonNode.Parse("""{ "cone": { "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.8 } } }"""),
            ["points"] = points,
            ["runs"] = runs,
        };
        return root.ToJsonString();
    }

    // Without choices left everything ends in nozzles. Each level is a third as wide as the one before, so that nothing meets in space.
    void Grow(string from, (double X, double Y, double Z) at, (double X, double Y, double Z) along, string? leaves, string tube, int depth)
    {
        var run = new JsonObject { ["from"] = from, ["tube"] = tube };
        if (Next(3) > 0) run["id"] = "run-" + runs.Count;
        if (leaves is not null) run["leaves"] = leaves;
        runs.Add(run);
        var reach = (0.5 + Next(100) / 100.0) * 3 / Math.Pow(3, depth);
        if (isPlaced) (at, along) = Lay(run, at, along, reach);
        else Measure(run, reach);
        if (Next(4) == 0) run["fittings"] = Next(2) == 0 ? new JsonArray("elbow-90-mitred") : new JsonArray(new JsonObject { ["fitting"] = "elbow-90-mitred", ["at"] = Metres(reach * (1 + Next(8)) / 10) });
        if (Next(5) == 0) run["lossCoefficient"] = 0.1;
        var kind = depth >= Deepest ? 0 : Next(8);
        var id = kind switch { 1 or 2 => "tee", 3 => "bull", 4 => "step", 5 => "node", 6 when nozzles > 0 => "cap", _ => "nozzle" } + points.Count;
        run["to"] = id;
        var side = Math.Abs(along.Z) > 0.5 ? (X: 1.0, Y: 0.0, Z: 0.0) : (X: 0.0, Y: 0.0, Z: 1.0);
        var point = Point(id, kind switch { 1 or 2 or 3 => "tee", 4 => "reducer", 5 => "junction", 6 when nozzles > 0 => "cap", _ => "nozzle" }, at);
        points.Add(point);
        switch (kind)
        {
            case 1 or 2:
                point["fedThrough"] = "run";
                Grow(id, at, along, "run", tube, depth + 1);
                Grow(id, at, side, "branch", "thin", depth + 1);
                break;
            case 3:
                point["fedThrough"] = "branch";
                Grow(id, at, side, null, tube, depth + 1);
                Grow(id, at, (-side.X, -side.Y, -side.Z), null, tube, depth + 1);
                break;
            case 4:
                Grow(id, at, along, null, "thin", depth + 1);
                break;
            case 5:
                Grow(id, at, along, null, tube, depth + 1);
                break;
            case 6 when nozzles > 0:
                break;
            default:
                nozzles++;
                point["nozzle"] = "cone";
                if (Next(5) == 0) point["note"] = "kept";
                break;
        }
    }

    void Measure(JsonObject run, double length)
    {
        run["length"] = Metres(length);
        if (Next(2) == 0) run["rise"] = Metres(length * (Next(21) - 10) / 10.0);
        if (length > 0.2 && Next(3) == 0) run["bends"] = new JsonArray(new JsonObject { ["angle"] = "90°", ["radius"] = "24 mm", ["count"] = 1 + Next(3) });
    }

    ((double, double, double) At, (double, double, double) Along) Lay(JsonObject run, (double X, double Y, double Z) at, (double X, double Y, double Z) along, double reach)
    {
        (double X, double Y, double Z) Forward((double X, double Y, double Z) from, (double X, double Y, double Z) to, double by) => (from.X + to.X * by, from.Y + to.Y * by, from.Z + to.Z * by);
        var end = Forward(at, along, reach);
        // Bends need room.
        if (Next(3) > 0 || reach < 0.2) return (end, along);
        run["via"] = new JsonArray(Place(end));
        var turned = Math.Abs(along.Y) > 0.5 ? (X: 1.0, Y: 0.0, Z: 0.0) : (X: 0.0, Y: 1.0, Z: 0.0);
        return (Forward(end, turned, reach), turned);
    }

    JsonObject Point(string id, string kind, (double X, double Y, double Z) at)
    {
        var point = new JsonObject { ["id"] = id, ["kind"] = kind };
        if (isPlaced) point["at"] = Place(at);
        return point;
    }

    int Next(int below) => choices.TryDequeue(out var choice) ? choice % below : 0;

    static JsonArray Place((double X, double Y, double Z) at) => [Metres(at.X), Metres(at.Y), Metres(at.Z)];

    static string Metres(double length) => length.ToString("0.######", CultureInfo.InvariantCulture) + " m";
}
