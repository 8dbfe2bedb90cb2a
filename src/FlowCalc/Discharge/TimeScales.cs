using FlowCalc.Losses;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Time scales of a discharge at its greatest flow.</summary>
internal static class TimeScales
{
    /// <summary>The scales.</summary>
    /// <param name="problem">The discharge.</param>
    /// <param name="lengths">Length of each run, m, in solve order.</param>
    /// <param name="course">What it gave.</param>
    /// <returns>Null where nothing left the nozzles.</returns>
    /// <remarks>
    /// A full line comes to its flow as u = u∞·tanh(t/τ) with τ = 2L/(u·S) = ρ·Σ(L·u)/Δp along the way to a nozzle, and is late by τ·ln 2; derived here.
    /// </remarks>
    public static QuasiSteadyCheck? Of(DischargeProblem problem, double[] lengths, DischargeCourse course)
    {
        if (!(course.PeakFullFlow > 0)) return null;
        var (network, density) = (problem.Network, problem.Liquid.ReferenceDensity);
        double inertia = 0, longest = 0, inventory = 0;
        double[] momentum = new double[network.Count], way = new double[network.Count];
        for (var j = 0; j < network.Count; j++)
        {
            var above = network.Parent[j];
            inventory += density * problem.Volume[j];
            way[j] = lengths[j] + (above < 0 ? 0 : way[above]);
            momentum[j] = lengths[j] * course.PeakRunFlow[j] / problem.Area[j] + (above < 0 ? 0 : momentum[above]);
        }
        foreach (var point in network.Nozzles)
        {
            inertia = Math.Max(inertia, momentum[point] / (course.PeakDrive - problem.Ambient));
            longest = Math.Max(longest, way[point]);
        }
        var emptying = density * problem.LiquidVolume * problem.Count / course.PeakFullFlow;
        return new(
            Duration.FromSeconds(emptying), Duration.FromSeconds(inertia),
            Duration.FromSeconds(2 * longest / Math.Sqrt(WaveSpeed.BulkModulusOfWater / density)),
            Duration.FromSeconds(inventory / course.PeakFullFlow), Duration.FromSeconds(inertia * Math.Log(2)), Verdict(inertia / emptying));
    }

    static string Verdict(double ratio) => ratio switch
    {
        < 0.01 => "Inertia of the liquid in the line is small beside the discharge: the flow may be taken as steady at each instant.",
        <= 0.05 => "Inertia of the liquid in the line delays the flow a little: add the lag to the times told.",
        _ => "Inertia of the liquid in the line is not small beside the discharge: take the times with care, and add the lag to them.",
    };
}
