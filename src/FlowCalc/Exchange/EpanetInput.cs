using System.Globalization;
using System.Text;
using FlowCalc.Agents;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Losses;

namespace FlowCalc.Exchange;

/// <summary>
/// Writes a layout as an input file of the EPANET engine (Rossman and others, EPANET 2.2 User Manual, EPA/600/R-20/133, 2020; public domain), so that its steady flow can be looked at with a program that shares nothing with this one.
/// </summary>
/// <remarks>
/// That engine knows tubes, constant loss coefficients and emitters, no tees whose loss hangs on the split and no bends whose loss hangs on the Reynolds number. What a run loses beside the friction of
/// its straight tube stands in the file as the coefficient that it comes to in our answer, frozen: with the same flows the file gives the same pressures, and what the two programs work out on their own is friction,
/// the balance of the branches and the nozzles. The engine counts in heads with g = 32.2 ft/s²; pressures are divided by that, and heights are scaled so that they cost what they cost at standard gravity.
/// </remarks>
public static class EpanetInput
{
    // ft/s² in metric, as the engine has it.
    const double EngineGravity = 32.2 * 0.3048, StandardGravity = 9.80665;

    // A pipe of the engine has to have a length.
    const double ShortestPipe = 1e-4;

    const int LongestComment = 120;

    /// <summary>Name of a point in the file.</summary>
    /// <param name="point">Index in <see cref="Layout.Points"/>.</param>
    public static string PointName(int point) => string.Create(CultureInfo.InvariantCulture, $"P{point}");

    /// <summary>Name of a run in the file.</summary>
    /// <param name="run">Index in <see cref="Layout.Runs"/>.</param>
    public static string RunName(int run) => string.Create(CultureInfo.InvariantCulture, $"R{run}");

    /// <summary>Why a layout cannot be written: its agent is no liquid, or nothing flows in it; null where it can be.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="flow">Its flow.</param>
    public static string? Refusal(Layout layout, FlowResult flow)
    {
        ArgumentNullException.ThrowIfNull(layout);
        ArgumentNullException.ThrowIfNull(flow);
        if (layout.Agent is not LiquidAgent) return $"{layout.Agent.Title} is no liquid; the format knows liquids alone";
        if (!flow.Report.Converged) return flow.Report.Failure ?? "the flow was not found";
        for (var at = 0; at < layout.Runs.Length; at++)
            if (Pipe(layout, flow, at) is not { Length: > 0 }) return $"run {layout.Runs[at].Id} gains more pressure in its tee than its tube loses, for which the format has no words";
        return null;
    }

    /// <summary>The file.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="flow">Its flow.</param>
    /// <returns>The text, lines ended by LF.</returns>
    /// <exception cref="ArgumentException">The layout cannot be written: see <see cref="Refusal"/>.</exception>
    public static string Write(Layout layout, FlowResult flow)
    {
        if (Refusal(layout, flow) is { } refusal) throw new ArgumentException(refusal, nameof(layout));
        var liquid = (LiquidAgent)layout.Agent;
        var (density, viscosity) = (liquid.Density(layout.Temperature.Kelvins), liquid.Viscosity(layout.Temperature.Kelvins));
        var text = new StringBuilder();
        Line($"[TITLE]");
        Line($"{Said(layout.Title ?? "A line without a title")}");
        Line($";Written by FlowCalc. Loss coefficients hold bends, tees, fittings, steps in bore and the bottle's outlet at the flows of its own answer.");
        Line($";Flows in L/s; lengths and heads in m of the liquid at g = 32.2 ft/s2; heights scaled to standard gravity; bores and roughness in mm.");
        Line($"[JUNCTIONS]");
        var heights = Heights(layout);
        for (var at = 0; at < layout.Points.Length; at++)
            if (layout.Points[at] is not SupplyPoint) Line($"{PointName(at)} {heights[at]} 0 ;{Said(layout.Points[at].Id)}");
        Line($"[RESERVOIRS]");
        for (var at = 0; at < layout.Points.Length; at++)
            if (layout.Points[at] is SupplyPoint) Line($"{PointName(at)} {(flow.Supply!.ReservoirPressure - layout.AmbientPressure).Pascals / (density * EngineGravity)} ;{Said(layout.Points[at].Id)}");
        Line($"[PIPES]");
        for (var at = 0; at < layout.Runs.Length; at++)
        {
            var (run, pipe) = (layout.Runs[at], Pipe(layout, flow, at));
            Line($"{RunName(at)} {PointName(run.From)} {PointName(run.To)} {pipe.Length} {run.Tube.Bore.Millimeters} {run.Tube.Roughness.Millimeters} {pipe.Coefficient} OPEN ;{Said(run.Id)}");
        }
        Line($"[EMITTERS]");
        // An emitter takes in what it can draw as well; a nozzle that height holds shut is left without one.
        var open = flow.Nozzles.Where(nozzle => nozzle.MassFlow.KilogramsPerSecond > 0).Select(nozzle => nozzle.Point).ToHashSet();
        for (var at = 0; at < layout.Points.Length; at++)
            if (layout.Points[at] is Nozzle nozzle && open.Contains(at)) Line($"{PointName(at)} {KFactor.ToEffectiveArea(nozzle.KFactor) * Math.Sqrt(2 * EngineGravity) * 1e3} ;{Said(nozzle.Id)}");
        Line($"[OPTIONS]");
        foreach (var option in (string[])["UNITS LPS", "PRESSURE METERS", "HEADLOSS D-W", "SPECIFIC GRAVITY 1", "EMITTER EXPONENT 0.5", "TRIALS 200", "ACCURACY 0.00001", "UNBALANCED STOP"]) Line($"{option}");
        // A multiple of the engine's own 1.1e-5 ft²/s would be taken for one above 1e-3; this is the viscosity itself, m²/s.
        Line($"VISCOSITY {viscosity / density}");
        Line($"[TIMES]");
        Line($"DURATION 0");
        Line($"[END]");
        return text.ToString();

        void Line(FormattableString line) => text.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
    }

    // Length that has the friction, m, and loss coefficient on the run's velocity head. What a run gains in its tee is taken off its length.
    static (double Length, double Coefficient) Pipe(Layout layout, FlowResult flow, int at)
    {
        var (run, told) = (layout.Runs[at], flow.Runs[at]);
        var length = Math.Max(LayoutCompiler.Straight(run), ShortestPipe);
        var density = ((LiquidAgent)layout.Agent).Density(layout.Temperature.Kelvins);
        var head = density * told.Velocity.MetersPerSecond * told.Velocity.MetersPerSecond / 2;
        if (head == 0) return (length, 0);
        var before = layout.Points[run.From] is SupplyPoint ? flow.Supply!.ReservoirPressure : flow.PointPressures[run.From];
        var lost = (before - flow.PointPressures[run.To] - told.Losses.Rise - told.Losses.Tube).Pascals;
        return lost >= 0 ? (length, lost / head) : (length * (1 + lost / told.Losses.Tube.Pascals), 0);
    }

    static double[] Heights(Layout layout)
    {
        var heights = new double[layout.Points.Length];
        var leaving = LeavingRuns.Of(layout);
        var waiting = new Stack<int>();
        waiting.Push(leaving.SupplyPoint);
        while (waiting.TryPop(out var point))
            foreach (var index in leaving.Of(point))
            {
                var run = layout.Runs[index];
                heights[run.To] = heights[point] + run.Rise.Meters * StandardGravity / EngineGravity;
                waiting.Push(run.To);
            }
        return heights;
    }

    // A comment ends with its line, and a line of the format has a length.
    static string Said(string text)
    {
        var plain = string.Concat(text.Select(one => char.IsControl(one) || one is ';' or '[' or ']' ? ' ' : one));
        return plain.Length <= LongestComment ? plain : plain[..LongestComment];
    }
}
