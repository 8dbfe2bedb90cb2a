namespace FlowCalc.Tests.Explanations;

/// <summary>The equations of studies, written again from their form alone.</summary>
internal static class StudyFormulas
{
    public static readonly Dictionary<string, Func<Values, double>> All = new()
    {
        ["pressure-difference"] = v => v["p"] - v["p0"],
        ["difference"] = v => v["x"] - v["x0"],
        ["ratio"] = v => (v["x"] - v["x0"]) / v["x0"],
        ["badness-over"] = v => v["d"],
        ["badness-under"] = v => -v["d"] / (1 + v["d"]),
        ["rank-steps"] = v => Math.Round(v["x"] / v["w"]),
        ["rank-behind"] = v => v["n"] - v["n0"],
        ["deviation-of-nozzle"] = v => (v["x"] - v["x0"]) / v["x0"],
        ["largest-deviation"] = v => Math.Max(v["d"], -v["d"]),
        ["cost-of-run"] = v => v["L"] * v["c"],
        ["mass-of-a-metre"] = v => v["ρ"] * Math.PI * (v["Do"] - v["D"]) * (v["Do"] + v["D"]) / 4,
        ["mass-of-run"] = v => v["L"] * v["w"],
        ["objective-gap"] = v => v["V"] > v["B"] ? v["V"] - v["B"] : 0,
        ["percentile-rank"] = v => (3 * v["N"] * v["y"] + v["y"] + 1) / 3,
        ["percentile"] = v => v["a"] * (1 - (v["h"] - v["j"])) + v["b"] * (v["h"] - v["j"]),
        ["chance"] = v => v["k"] / v["N"],
        ["chance-low"] = v => Wilson(v, -1),
        ["chance-high"] = v => Wilson(v, 1),
        ["index-within"] = v => Math.Max(v["T"] - v["S"], 0) / (v["N"] - v["B"]),
        ["first-order-index"] = v => (v["S"] + v["W"] - v["B"] * v["W"]) / (v["T"] + v["W"]),
        ["index-error"] = v => Math.Sqrt(v["Q"] - v["Q"] / v["G"]),
    };

    // The chance p at which the part found is z standard deviations of p away: (q - p)² = z²·p·(1 - p)/N.
    static double Wilson(Values v, int side)
    {
        var (n, z, q) = (v["N"], v["z"], v["q"]);
        var (a, b, c) = (1 + z * z / n, -(2 * q + z * z / n), q * q);
        return (-b + side * Math.Sqrt(Math.Max(0, b * b - 4 * a * c))) / (2 * a);
    }
}
