using FlowCalc.Agents;
using FlowCalc.Quantities;

namespace FlowCalc.Findings;

/// <summary>Places where the liquid would boil, or be torn apart, before it comes to the pressure that was worked out.</summary>
static class VapourPressures
{
    public static void Find(FlowCase flowCase, FindingList findings)
    {
        // A gas or an agent that boils is followed on its way.
        if (flowCase.Layout.Agent is not LiquidAgent agent) return;
        var temperature = flowCase.Layout.Temperature.Kelvins;
        // 0 where nothing is known: then only what no liquid bears is told.
        var vapour = agent.VapourPressure(temperature);
        var lowest = Lowest(flowCase);
        List<int>? below = null;
        for (var point = 0; point < lowest.Length; point++)
            if (lowest[point] <= vapour * (1 - 1e-9)) (below ??= []).Add(point);
        if (below is null) return;

        var worstFirst = below.OrderBy(point => lowest[point]).ThenBy(point => point).Take(FindingList.MostIds).ToArray();
        var worst = worstFirst[0];
        var (pressure, units) = (lowest[worst], flowCase.Units);
        var bound = vapour > 0
            ? $"below the vapour pressure of the liquid at {Wording.Of(temperature, QuantityKind.Temperature, units)}, {Wording.Of(vapour, QuantityKind.Pressure, units)} absolute: it boils there"
            : "below nothing: no liquid flows so";
        var others = below.Count > 1 ? $"; so it is, and no worse, at {Wording.Count(below.Count - 1, "other point")}" : "";
        findings.Add(new Finding(FindingCodes.BelowVapourPressure, Severity.Fail, [.. worstFirst.Select(flowCase.PointId)],
            $"The pressure at {Wording.Id(flowCase.PointId(worst))} comes out at {Wording.Of(pressure, QuantityKind.Pressure, units)} absolute ({Wording.Gauge(pressure, flowCase)} gauge), "
            + $"{bound}, and the figures do not hold{others}.",
            new Measure(pressure - flowCase.Ambient, QuantityKind.Pressure), new Measure(vapour - flowCase.Ambient, QuantityKind.Pressure), "the agent's data", null), worst);
    }

    /// <summary>The least absolute total pressure at each point that liquid flows through, Pa; infinite at the others.</summary>
    public static double[] Lowest(FlowCase flowCase)
    {
        var lowest = new double[flowCase.Layout.Points.Length];
        Array.Fill(lowest, double.PositiveInfinity);
        var (runs, flows) = (flowCase.Layout.Runs, flowCase.Flow.Runs);
        for (var index = 0; index < runs.Length; index++)
        {
            flowCase.Pass(index);
            if (!(flows[index].MassFlow.KilogramsPerSecond > 0)) continue;
            var (from, to) = (runs[index].From, runs[index].To);
            lowest[from] = Math.Min(lowest[from], flows[index].PressureIn.Pascals);
            lowest[to] = Math.Min(lowest[to], flows[index].PressureOut.Pascals);
        }
        // What leaves a nozzle comes to the pressure of the surroundings.
        foreach (var nozzle in flowCase.Flow.Nozzles)
            if (!NozzleShares.IsClosed(nozzle)) lowest[nozzle.Point] = Math.Min(lowest[nozzle.Point], flowCase.Ambient);
        return lowest;
    }
}
