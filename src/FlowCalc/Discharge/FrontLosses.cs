using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>What a run costs while a front stands in it.</summary>
internal static class FrontLosses
{
    /// <summary>
    /// Sum of K / (2 A²) of a run, 1/m⁴: its own, which acts on the liquid that enters it and is dropped once gas does; and the nozzles' resistance
    /// to the air that its front pushes ahead.
    /// </summary>
    /// <remarks>
    /// The valve stands at the outlet's end, so that run 0 keeps its own until gas has passed. Air as incompressible, ½ρu² in the nozzles:
    /// good below 100 m/s there.
    /// </remarks>
    public static double Constant(DischargeProblem problem, LineGeometry geometry, LineState line, int run)
    {
        var own = run > 0 && line.IsSwept[run] ? 0 : geometry.Network.Constant[run];
        var ahead = geometry.NozzleAreaAhead[run];
        if (line.IsFull[run] || ahead == 0) return own;
        return own + problem.AirDensity / problem.Liquid.ReferenceDensity * Resistance.OfArea(ahead);
    }

    /// <summary>Brings the moving runs' friction, bends and rise to their wetted length, and the air shut in ahead to its pressure.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="geometry">Its line.</param>
    /// <param name="line">Which air is shut in.</param>
    /// <param name="tree">What is wetted; its arrays are overwritten.</param>
    /// <param name="heads">Front of the liquid in each run.</param>
    /// <param name="tails">Front of the gas in each run.</param>
    public static void Follow(DischargeProblem problem, LineGeometry geometry, LineState line, WettedTree tree, ReadOnlySpan<double> heads, ReadOnlySpan<double> tails)
    {
        var (full, part) = (geometry.Network, tree.State.Network);
        int bend = 0, throat = 0;
        foreach (var k in tree.Moving)
        {
            var j = tree.Runs[k];
            // A step may try positions past the end of a run, or a film's end; a negative length would give energy.
            var wetted = Math.Max(heads[j] - tails[j], 0);
            part.Tubes.Weight[k] = full.Tubes.Weight[j] * wetted;
            part.Rise[k] = full.Rise[j] * wetted + ShutAirHead(problem, geometry, line, heads[j], j);
            while (bend < part.Bends.Count && part.Bends.Run[bend] < k) bend++;
            for (var i = geometry.BendStart[j]; i < geometry.BendStart[j + 1]; i++) part.Bends.Weight[bend++] = full.Bends.Weight[i] * wetted;
            while (throat < part.Throats.Count && part.Throats.Run![throat] < k) throat++;
            for (var i = geometry.ThroatStart[j]; i < geometry.ThroatStart[j + 1]; i++) part.Throats.Weight[throat++] = full.Throats.Weight[i] * wetted;
        }
    }

    // Isothermal: so small a tube gives the air all the heat it can take.
    static double ShutAirHead(DischargeProblem problem, LineGeometry geometry, LineState line, double head, int run)
    {
        if (line.ShutAir[run] == 0 || line.IsFull[run]) return 0;
        var left = geometry.VolumeAhead[run] - Math.Min(head, 1) * problem.Volume[run];
        var least = 1e-9 * geometry.VolumeAhead[run];
        return (line.ShutAir[run] / Math.Max(left, least) - problem.Ambient) / (problem.Liquid.ReferenceDensity * HydrostaticRise.StandardGravity);
    }
}
