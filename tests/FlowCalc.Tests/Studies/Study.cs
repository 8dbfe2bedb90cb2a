using FlowCalc.Studies.Sampling;
using FlowCalc.Studies.Tolerance;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Studies;

/// <summary>Small studies of tolerances for tests.</summary>
static class Study
{
    /// <summary>A bottle of water, a tee and two nozzles.</summary>
    public const string Bottle = """
        { "format": 1, "agent": "water", "temperature": "20 °C",
          "supply": { "bottle": { "volume": "2.4 L", "fill": "1.6 kg", "chargePressure": "14 bar", "shape": { "diameter": "110 mm", "length": "252.5 mm" }, "wall": { "material": "aluminium", "thickness": "2.5 mm" },
            "outlet": { "dipTube": { "bore": "10 mm", "length": "246 mm" }, "valveKv": "2 m3/h" } } },
          "zones": { "cab": { "share": 0.5 } },
          "tubes": { "feed": { "bore": "8 mm", "roughness": "1.5 µm" } },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "run", "body": "smooth" },
            { "id": "near", "kind": "nozzle", "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.8 }, "zone": "cab" }, { "id": "far", "kind": "nozzle", "orifice": { "diameter": "1.6 mm", "dischargeCoefficient": 0.8 } } ],
          "runs": [ { "id": "A", "from": "S", "to": "T", "tube": "feed", "length": "1.2 m", "rise": "0.3 m" }, { "id": "B", "from": "T", "to": "near", "leaves": "branch", "bore": "4 mm", "length": "0.5 m" },
            { "id": "C", "from": "T", "to": "far", "leaves": "run", "bore": "5 mm", "length": "2.4 m", "rise": "-0.4 m", "bends": [{ "angle": "90 °", "radius": "20 mm", "count": 2 }] } ] }
        """;

    /// <summary>A nozzle at the end of a tube so wide and short that nothing is lost on the way.</summary>
    public static string Plain { get; } = Documents.Water("""{ "id": "N", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }""", """{ "id": "R", "from": "S", "to": "N", "bore": "100 mm", "length": "0.01 m" }""");

    public static SpreadThing Thing(string document, string path, StudiedAnswer answer = StudiedAnswer.Flow) =>
        SpreadThings.Of(Documents.Read(document), answer).Single(thing => thing.Path == path);

    /// <summary>A question with what a function spreads.</summary>
    public static ToleranceQuestion Ask(string document, StudiedAnswer answer = StudiedAnswer.Flow, int samples = 1_000, ulong seed = 1, params (string Path, Func<SpreadThing, Distribution> Values)[] spreads)
    {
        var layout = Documents.Read(document);
        var things = SpreadThings.Of(layout, answer);
        return new ToleranceQuestion
        {
            Layout = layout,
            Answer = answer,
            Samples = samples,
            Seed = seed,
            Variables = spreads.Length == 0
                ? DefaultSpreads.Of(things).Variables
                : [.. spreads.Select(spread => things.Single(thing => thing.Path == spread.Path) is var thing ? new SpreadVariable(thing, spread.Values(thing), "test") : null!)],
        };
    }

    public static ToleranceResult Run(ToleranceQuestion question, TaskScheduler? scheduler = null) =>
        ToleranceStudy.Run(question, scheduler ?? TaskScheduler.Default, null, TestContext.Current.CancellationToken);

    public static SampleSummary Of(this IEnumerable<FigureSpread> figures, Figure figure) => figures.Single(one => one.Figure == figure).Summary;
}
