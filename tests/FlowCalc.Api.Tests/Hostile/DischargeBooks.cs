using System.Text.Json;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Bottles;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>What must hold of a case, however hostile its document.</summary>
static class DischargeBooks
{
    // Of the documents: kg/m³.
    const double GreatestDensity = 25_000;

    const double Rounding = 1e-14;

    /// <summary>What does not hold; null where all does.</summary>
    /// <param name="one">The case.</param>
    /// <param name="bottle">The document's bottle.</param>
    public static string? Wrong(JsonElement one, Bottle bottle)
    {
        var fill = bottle.Fill.Kilograms * bottle.Count;
        var (nozzles, series) = (one.GetProperty("nozzles"), one.GetProperty("series"));
        double[] masses = [.. nozzles.EnumerateArray().Select(nozzle => Kilograms(nozzle.GetProperty("mass")))];
        double[] left = [Kilograms(one.GetProperty("leftInBottle")), Kilograms(one.GetProperty("leftInTubes"))];
        var liquid = Numbers(series, "liquidInBottle");
        var all = masses.Sum() + left.Sum();
        // Liquid is what the gas leaves of the bottle, so that a drop in a large one carries the rounding of the whole.
        var slack = 1e-9 * fill + Rounding * GreatestDensity * bottle.Volume.CubicMeters * bottle.Count;
        if (!(Math.Abs(all - fill) <= slack))
            return $"{fill} kg filled in, {all} kg out and left";
        if (masses.Concat(left).Any(mass => mass < -slack))
            return $"a mass below nothing in {one.GetProperty("attitude")}: {string.Join(", ", masses)}; {string.Join(", ", left)}";
        if (!(SiUnits.Of(liquid.Max(), series.GetProperty("units").GetProperty("mass").GetString()!) <= fill + slack))
            return $"{liquid.Max()} in the bottle, and {fill} kg filled in";
        var shares = nozzles.EnumerateArray().Sum(nozzle => nozzle.GetProperty("share").GetDouble());
        if (Math.Abs(shares - (masses.Sum() > 0 ? 1 : 0)) > 1e-9)
            return $"shares add up to {shares}";
        var times = Numbers(series, "time");
        for (var at = 1; at < times.Length; at++)
            if (times[at] < times[at - 1])
                return $"time goes back from {times[at - 1]} to {times[at]}";
        var end = one.GetProperty("end").Value();
        foreach (var field in (string[])["time95", "liquidEnd"])
            if (one.GetProperty(field) is { ValueKind: JsonValueKind.Object } time && time.Value() > end)
                return $"{field} {time.Value()} after the end {end}";
        foreach (var nozzle in nozzles.EnumerateArray())
            if (nozzle.GetProperty("arrival") is { ValueKind: JsonValueKind.Object } arrival && (arrival.Value() > end || arrival.Value() < 0))
                return $"arrival {arrival.Value()}, end {end}";
        return null;
    }

    static double Kilograms(JsonElement mass) => SiUnits.Of(mass.Value(), mass.GetProperty("unit").GetString()!);

    static double[] Numbers(JsonElement node, string field) => [.. node.GetProperty(field).EnumerateArray().Select(number => number.GetDouble())];
}
