namespace FlowCalc.Tests.Explanations;

/// <summary>The equations of a cut list, written again from their form alone.</summary>
internal static class CuttingFormulas
{
    public static readonly Dictionary<string, Func<Values, double>> All = new()
    {
        ["leg-part"] = v => v["c2"] - v["c1"],
        ["leg-length"] = v => Length(v["dx"], v["dy"], v["dz"]),
        ["plane-normal"] = v => v["a1"] * v["b2"] - v["b1"] * v["a2"],
        // Between unit vectors by the chord, not by the arc tangent.
        ["bend-angle"] = v => Angle([v["ax"], v["ay"], v["az"]], [v["bx"], v["by"], v["bz"]]),
        ["bend-rotation"] = v => Rotation(v),
        ["bend-rotation-half"] = v => Math.Abs(Rotation(v)),
        ["bend-setback"] = v => v["r"] * Math.Sin(v["θ"] / 2) / Math.Cos(v["θ"] / 2),
        ["bend-arc"] = v => v["θ"] * v["r"],
        ["bend-gain"] = v => v["t"] + v["t"] - v["a"],
        ["allowance-insertion"] = v => v["i"],
        ["allowance-stop"] = v => -v["c"],
        ["allowance-half-length"] = v => -0.5 * v["b"],
        ["piece-length"] = v => v["s2"] + v["a2"] - (v["s1"] - v["a1"]),
        ["cut-length"] = v => Math.Ceiling(v["l"] * 1000 - 0.000001) / 1000,
        ["sawn-length"] = v => v["c"] + v["q"] + v["q"],
        ["bend-mark"] = v => v["s"] - (v["s1"] - v["a1"]),
        ["arc-end"] = v => v["a"] + v["s"],
        ["tube-end"] = v => v["a2"] + v["s2"],
        ["straight-of-piece"] = v => v["s2"] - v["e"],
        ["clip-spacing"] = v => (v["d1"] * (v["D2"] - v["D"]) + v["d2"] * (v["D"] - v["D1"])) / (v["D2"] - v["D1"]),
        ["clip-spacing-largest"] = v => v["d1"],
        ["clip-spacing-usual"] = v => v["d1"] < 0.3 ? v["d1"] : 0.3,
        ["clip-behind"] = v => v["s1"] + 0.1,
        ["clip-before"] = v => v["s2"] - 0.1,
        ["clip-in-the-middle"] = v => (v["s1"] + v["s2"]) / 2,
        ["clips-between"] = v => FewestClips(v["g"], v["d"], v["f1"], v["f2"]),
        ["clip-span"] = v => v["g"] / (v["f1"] + v["f2"] + (v["n"] - 1)),
        ["sleeve-length"] = v => Math.Min(v["s2"] + 0.05, v["L"]) - Math.Max(v["s1"] - 0.05, 0),
        ["sleeve-inside"] = v => v["D"] + 0.001,
        ["order-length"] = v => (v["n"] * v["k"] + v["S"]) * (1 + v["x"]),
        ["tube-mass"] = v => v["ρ"] * v["S"] * Math.PI * (v["Do"] - v["D"]) * (v["Do"] + v["D"]) / 4,
        ["tube-volume"] = v => Math.PI * v["D"] * v["D"] * v["S"] / 4,
        ["bar-offcut"] = v => v["l"] > v["c"] ? v["l"] - v["c"] : 0,
        ["stock-bound-content"] = v => Math.Ceiling(v["C"] * v["s"] / (v["s"] + v["k"]) / v["g"] - 1e-9) * v["g"],
        ["stock-bound-bars"] = v => v["h"] + Math.Max(0, Math.Ceiling((v["R"] - v["F"]) / (v["l"] + v["k"]) - 1e-9)),
        ["stock-bound"] = v => new[] { v["u"], v["v"], v["n"] * v["s"] }.Max(),
        ["spare-bars"] = v => Math.Max(0, Math.Ceiling((v["o"] - v["U"]) / v["l"] - 1e-9)),
    };

    static double Length(double x, double y, double z) => Math.Sqrt(x * x + y * y + z * z);

    static double Angle(double[] a, double[] b)
    {
        var (la, lb) = (Length(a[0], a[1], a[2]), Length(b[0], b[1], b[2]));
        var (chord, sum) = (Length(a[0] / la - b[0] / lb, a[1] / la - b[1] / lb, a[2] / la - b[2] / lb), Length(a[0] / la + b[0] / lb, a[1] / la + b[1] / lb, a[2] / la + b[2] / lb));
        return 2 * Math.Atan2(chord, sum);
    }

    // The angle between the two arrows, with the side on which the second lies seen along the leg.
    static double Rotation(Values v)
    {
        double[] n = [v["nx"], v["ny"], v["nz"]], m = [v["mx"], v["my"], v["mz"]];
        var side = v["bx"] * (n[1] * m[2] - n[2] * m[1]) + v["by"] * (n[2] * m[0] - n[0] * m[2]) + v["bz"] * (n[0] * m[1] - n[1] * m[0]);
        return side < 0 ? -Angle(n, m) : Angle(n, m);
    }

    // One after another until every span is short enough.
    static double FewestClips(double gap, double spacing, double first, double last)
    {
        var clips = 1;
        while (gap / (first + last + clips - 1) > spacing * (1 + 2e-9)) clips++;
        return clips;
    }
}
