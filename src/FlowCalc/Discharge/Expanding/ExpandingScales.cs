using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>Time scales of the discharge of a gas or a liquefied gas at its greatest flow.</summary>
internal static class ExpandingScales
{
    // Beyond this part of the emptying time what the line packs is not small.
    const double Packing = 0.1;

    /// <summary>The scales.</summary>
    /// <param name="problem">The discharge.</param>
    /// <param name="lengths">Length of each run, m, in solve order.</param>
    /// <param name="course">What it gave.</param>
    /// <returns>Null where nothing left the nozzles before the end of the liquid.</returns>
    /// <remarks>As for a liquid: τ = Σ(L·ṁ/A)/Δp along the way to a nozzle, late by τ·ln 2; derived here. The wave runs at the speed of sound of the homogeneous mixture.</remarks>
    public static QuasiSteadyCheck? Of(ExpandingProblem problem, double[] lengths, DischargeCourse course)
    {
        if (!(course.PeakFullFlow > 0) || !(course.PeakDrive > problem.Ambient)) return null;
        var network = problem.Network;
        double inertia = 0, acoustic = 0;
        double[] momentum = new double[network.Count], wave = new double[network.Count];
        for (var j = 0; j < network.Count; j++)
        {
            var above = network.Parent[j];
            wave[j] = lengths[j] / course.PeakSoundSpeed[j] + (above < 0 ? 0 : wave[above]);
            momentum[j] = lengths[j] * Math.Abs(course.PeakRunFlow[j]) / problem.Area[j] + (above < 0 ? 0 : momentum[above]);
        }
        foreach (var point in network.Nozzles)
        {
            inertia = Math.Max(inertia, momentum[point] / (course.PeakDrive - problem.Ambient));
            acoustic = Math.Max(acoustic, 2 * wave[point]);
        }
        var emptying = problem.Bottle.Charge * problem.Count / course.PeakFullFlow;
        var inventory = course.PeakInLine / course.PeakFullFlow;
        return new(
            Duration.FromSeconds(emptying), Duration.FromSeconds(inertia), Duration.FromSeconds(acoustic), Duration.FromSeconds(inventory), Duration.FromSeconds(inertia * Math.Log(2)),
            Verdict(inertia / emptying, inventory / emptying));
    }

    static string Verdict(double inertia, double packing) => (inertia, packing) switch
    {
        ( > 0.05, _) => "Inertia of what is in the line is not small beside the discharge: take the times with care, and add the lag to them.",
        (_, > Packing) => "What the line holds is not small beside the contents: what each nozzle gives early is not to be trusted, the shares at the end are.",
        ( > 0.01, _) => "Inertia of what is in the line delays the flow a little: add the lag to the times told.",
        _ => "Inertia and contents of the line are small beside the discharge: the flow may be taken as steady at each instant.",
    };
}
