namespace FlowCalc.Tests.Explanations;

/// <summary>Every equation of an explanation, written again from its form alone: values by symbol in SI in, both sides out.</summary>
internal static class HandFormulas
{
    static readonly Dictionary<string, Func<Values, double>> Explicit = new()
    {
        ["mean-velocity"] = v => v["m"] / v["ρ"] / (Math.PI * v["D"] * v["D"] / 4),
        ["reynolds"] = v => 4 * v["m"] / Math.PI / v["D"] / v["μ"],
        ["friction-laminar"] = v => 64 / v["Re"],
        ["friction-slope-at-4000"] = v => SlopeAt4000(v["f2"], v["ε"] / v["D"]),
        ["friction-transition"] = v => Hermite((v["Re"] - 2000) / 2000, 0.032, -0.032, v["f2"], 2000 * v["f2'"]),
        ["tube-friction"] = v => v["f"] * v["L"] / v["D"] * Head(v),
        ["rise"] = v => v["ρ"] * v["g"] * v["z"],
        ["bend-reynolds"] = v => Math.Sqrt(v["Re"] * v["Re"] + 250_000),
        ["bend-turbulent"] = v => BendTurbulent(v["f"], v["θ"], v["r"] / v["D"]),
        ["dean"] = v => v["Re"] * Math.Sqrt(v["D"] / 2 / v["r"]),
        ["curved-tube-friction"] = v => 64 / v["Re"] / (1 - Math.Pow(1 - Math.Pow(11.6 / v["De"], 0.45), 1 / 0.45)),
        ["bend-laminar"] = v => v["fc"] * v["θ"] * v["r"] / v["D"],
        ["bend-both"] = v => Math.Pow(Math.Pow(v["Kt"], 8) + Math.Pow(v["Kl"], 8), 0.125),
        ["coefficient-loss"] = v => v["n"] * v["K"] * Head(v),
        ["kv-loss"] = v => v["n"] * v["ρ"] / 1000 * Squared(v["m"] / v["ρ"]) / (v["Kv"] * v["Kv"]),
        ["sharp-turn"] = v => 0.42 * Math.Sin(v["θ"] / 2) + 2.56 * Math.Pow(Math.Sin(v["θ"] / 2), 3),
        ["sharp-contraction"] = v => Contraction(v["D1"] / v["D2"]),
        ["sudden-expansion"] = v => Math.Pow(1 - Math.Pow(v["D1"] / v["D2"], 2), 2),
        ["thick-orifice-tau"] = v => v["τa"] + (v["τb"] - v["τa"]) * (v["l"] / v["d"] - v["xa"]) / (v["xb"] - v["xa"]),
        ["thick-orifice"] = v => ThickOrifice(v["τ"], 1 - Math.Pow(v["D1"] / v["D2"], 2)),
        ["tee-share"] = v => v["m"] / v["m0"],
        ["tee-run"] = v => 0.62 * v["w"] * v["w"] - 0.98 * v["w"] + 0.36 + 0.03 * Math.Pow(v["w"], 8) + v["x"] * v["w"] * v["w"],
        ["tee-branch"] = v => Branch(v["w"], v["Db"] / v["D0"], v["x"]),
        ["tee-bullhead"] = v => 1 + v["k"] * Math.Pow(v["w"] * Math.Pow(v["D0"] / v["D"], 2), 2),
        ["flow-of-one-bottle"] = v => v["m"] / v["n"],
        ["orifice-loss"] = v => Squared(v["m"]) / (2 * v["ρ"] * Math.Pow(v["Cd"] * Math.PI / 4 * v["d"] * v["d"], 2)),
        ["regulator"] = v => v["p"] - v["pr"],
        ["k-factor-area"] = v => v["K"] * Math.Sqrt(500),
        ["orifice-area"] = v => v["n"] * v["Cd"] * Math.PI * v["d"] * v["d"] / 4,
        ["nozzle-flow"] = v => v["CA"] * Math.Sqrt(2 * v["ρ"] * v["p"]),
        ["dry-nozzle"] = _ => 0,
        ["end-pressure"] = v => v["p1"] - v["Δp"],
        ["mass-flux"] = v => v["m"] / v["n"] / (Math.PI / 4 * v["D"] * v["D"]),
        ["weight-of-column"] = v => v["g"] * v["z"] * (v["ρ1"] * v["ρ1"] + v["ρ2"] * v["ρ2"]) / 2 / v["ρ0"],
        ["run-balance"] = v => v["Ψ1"] - v["G"] * v["G"] / v["ρ0"] * Math.Log(v["ρ1"] / v["ρ2"]) - v["ΔΨ"] - v["ΔΨw"],
        ["rise-of-gas"] = v => v["g"] * v["z"] * (v["ρ1"] + v["ρ2"]) / 2,
        ["part-of-drop"] = v => (v["p1"] - v["p2"] - v["Δpz"]) * v["ΔΨk"] / v["ΔΨ"],
        ["whole-drop"] = v => v["p1"] - v["p2"] - v["Δpz"],
        ["nozzle-flux"] = v => v["CA"] * v["G"],
        ["nozzle-expansion"] = v => Math.Sqrt(2 * v["w"]) / v["v"],
        ["nozzle-delayed-expansion"] = v => Math.Sqrt(2 * (v["wf"] + v["N"] * (v["w"] - v["wf"]))) / (v["vf"] + v["N"] * (v["v"] - v["vf"])),
        ["closed-nozzle"] = _ => 0,
        ["cushion-volume"] = v => v["V"] - v["M"] / v["ρ"],
        ["cushion-density"] = v => v["ρc"] * v["Vc"] / v["Vg"],
        ["gas-pressure"] = v => v["Z"] * v["ρg"] * v["R"] * v["T"],
        ["bottle-pressure"] = v => v["pg"] + v["pv"],
        ["liquid-part"] = v => ((v["M"] - v["Mg"]) / v["ρl"] + v["Nl"] * v["b"]) / v["V"],
        ["agent-pressure-under-nitrogen"] = v => (1 - v["y"]) * v["ps"] * Math.Exp(v["M"] / v["ρl"] / 8.314462618 / v["T"] * (v["p"] - v["ps"])),
        ["rest-density"] = v => v["M"] / v["V"],
        ["density-of-gas-over-liquid"] = v => (v["Mg"] + v["N"]) / (1 - v["x"]) / v["V"],
        ["head-in-bottle"] = v => v["ρ"] * v["g"] * v["a"] * (v["zs"] - v["zi"]),
        ["cushion-at-uncovering"] = v => v["V"] - v["Vl"] - v["Vd"],
        ["cushion-law"] = v => v["p"] * Math.Pow(v["Vg"] / v["Vu"], v["n"]),
        ["cushion-volume-rate"] = v => v["m"] / v["ρ"] / v["n"],
        ["cushion-density-rate"] = v => -v["ρg"] * v["dV"] / v["Vg"],
        ["cushion-temperature-rate"] = v => v["T"] * v["β"] / (v["ρg"] * v["ρg"] * v["cv"]) * v["dρ"],
        ["contents-rate"] = v => v["m"] / v["n"] / v["M"],
    };

    static readonly Dictionary<string, Func<Values, double, (double Left, double Right)>> Implicit = new()
    {
        ["friction-turbulent"] = (v, f) => (1 / Math.Sqrt(f), -2 * Math.Log10(v["ε"] / v["D"] / 3.7 + 2.51 / (v["Re"] * Math.Sqrt(f)))),
        ["lossless-step"] = (v, _) => (v["W"] + v["G"] * v["G"] / (2 * v["ρ"] * v["ρ"]), v["W0"]),
        ["choked-end"] = (v, p) => (v["G"] * v["G"], v["ρ"] * p / v["c"]),
    };

    static readonly HashSet<string> Sums =
    [
        "drop-of-run", "drop-of-path", "mass-balance", "loss-of-run", "loss-of-kind",
        "straight-of-run", "developed-length", "place-along-run", "clip-count", "total-length", "bar-content", "stock-bound-long", "pieces-exchanged", "objective-sum",
    ];

    /// <summary>Ids of all equations that can be done by hand.</summary>
    public static IEnumerable<string> Ids => [.. Explicit.Keys, .. CuttingFormulas.All.Keys, .. StudyFormulas.All.Keys, .. Implicit.Keys, .. Sums];

    /// <summary>Both sides of a step: its result and what its values give, or the sides of an implicit equation.</summary>
    public static (double Left, double Right) Sides(string id, IReadOnlyList<(string Symbol, double Si)> values, double result)
    {
        if (Sums.Contains(id)) return (result, values.Sum(value => value.Si));
        var named = new Values(values);
        return Implicit.TryGetValue(id, out var sides) ? sides(named, result) : (result, (Explicit.GetValueOrDefault(id) ?? CuttingFormulas.All.GetValueOrDefault(id) ?? StudyFormulas.All[id])(named));
    }

    static double Head(Values v) => v["ρ"] * Squared(v["v"]) / 2;

    static double Squared(double x) => x * Math.Abs(x);

    static double Hermite(double t, double start, double startRise, double end, double endRise) =>
        (2 * t * t * t - 3 * t * t + 1) * start + (t * t * t - 2 * t * t + t) * startRise + (3 * t * t - 2 * t * t * t) * end + (t * t * t - t * t) * endRise;

    // By differences of Colebrook's equation itself, not by its derivative.
    static double SlopeAt4000(double factor, double roughness)
    {
        double At(double reynolds)
        {
            var f = factor;
            for (var i = 0; i < 200; i++) f = Math.Pow(-2 * Math.Log10(roughness / 3.7 + 2.51 / (reynolds * Math.Sqrt(f))), -2);
            return f;
        }
        return (At(4000.5) - At(3999.5)) / 1;
    }

    static double BendTurbulent(double f, double angle, double ratio)
    {
        var s = Math.Sin(angle / 2);
        return f * angle * ratio + (0.1 + 2.4 * f) * s + 6.6 * f * (Math.Sqrt(s) + s) / Math.Pow(ratio, 4 * angle / Math.PI);
    }

    static double Contraction(double b)
    {
        var jet = 1 + 0.622 * (1 - 0.215 * b * b - 0.785 * Math.Pow(b, 5));
        return 0.0696 * (1 - Math.Pow(b, 5)) * jet * jet + (jet - 1) * (jet - 1);
    }

    static double ThickOrifice(double tau, double left) => 0.5 * Math.Pow(left, 0.75) + tau * Math.Pow(left, 1.375) + left * left;

    static double Branch(double w, double ratio, double threaded)
    {
        var (b, wider) = (Math.Min(ratio, 1), Math.Max(ratio, 1));
        return 0.81 * w * w - 1.13 * w + 1 + w * w * ((1.12 * b - 1.08 * Math.Pow(b, 3) + 0.57) / Math.Pow(b, 4) + threaded + Math.Pow(1 - 1 / (wider * wider), 2));
    }
}

/// <summary>The numbers of a step by symbol, in SI.</summary>
internal sealed class Values(IReadOnlyList<(string Symbol, double Si)> values)
{
    public double this[string symbol] => values.Single(value => value.Symbol == symbol).Si;
}
