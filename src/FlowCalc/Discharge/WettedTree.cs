using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>
/// The part of a line that holds liquid, as a network of its own: fronts are open ends that cost one velocity head, and a run that gas has
/// entered hangs on the gas, whose pressure is the bottle's throughout.
/// </summary>
internal sealed class WettedTree
{
    WettedTree(Network network, int[] runs, Outlet[] outlets, int[] moving)
    {
        State = new SteadyState(network);
        (Runs, Outlets, Moving) = (runs, outlets, moving);
    }

    /// <summary>Network and flows of the wetted part. Its arrays of weights, rises and constants follow the fronts.</summary>
    public SteadyState State { get; }

    /// <summary>Run of the whole line for each run here; −1 for the start where gas has filled the outlet.</summary>
    public int[] Runs { get; }

    /// <summary>Nozzles and fronts, in rising order of their points.</summary>
    public Outlet[] Outlets { get; }

    /// <summary>Runs, counted here, in which a front of liquid or gas moves.</summary>
    public int[] Moving { get; }

    /// <summary>Builds what is wetted now.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="geometry">Its line.</param>
    /// <param name="line">How far the fronts have come.</param>
    public static WettedTree Of(DischargeProblem problem, LineGeometry geometry, LineState line)
    {
        var full = geometry.Network;
        Span<int> place = full.Count <= 256 ? stackalloc int[full.Count] : new int[full.Count];
        var runs = new List<int>(full.Count) { line.HasLiquid(0) ? 0 : -1 };
        List<Outlet> outlets = [];
        List<int> moving = [];
        place.Fill(-1);
        for (var j = 0; j < full.Count; j++)
        {
            if (!line.HasLiquid(j)) continue;
            if (j > 0) runs.Add(j);
            var here = place[j] = j == 0 ? 0 : runs.Count - 1;
            if (!line.IsFull[j])
            {
                if (!line.IsHeld[j]) outlets.Add(new(here, j, -1));
            }
            else if (geometry.NozzleOf[j] >= 0)
                outlets.Add(new(here, j, geometry.NozzleOf[j]));
            if (!line.IsFull[j] || line.IsSwept[j]) moving.Add(here);
        }
        return new(Pack(problem, geometry, line, [.. runs], place, outlets), [.. runs], [.. outlets], [.. moving]);
    }

    static Network Pack(DischargeProblem problem, LineGeometry geometry, LineState line, int[] runs, ReadOnlySpan<int> place, List<Outlet> outlets)
    {
        var full = geometry.Network;
        var padded = NetworkBuilder.Padded(runs.Length);
        int[] parent = new int[runs.Length];
        double[] perFlow = new double[padded], weight = new double[padded], rough = new double[padded], constant = new double[padded], rise = new double[runs.Length];
        int bends = 0, throats = 0, legs = 0;
        for (var k = 0; k < runs.Length; k++)
        {
            var j = runs[k];
            if (j < 0)
            {
                (parent[k], perFlow[k]) = (-1, full.Tubes.ReynoldsPerFlow[0]);
                continue;
            }
            parent[k] = j == 0 ? -1 : line.IsSwept[j] ? 0 : place[full.Parent[j]];
            (perFlow[k], weight[k], rough[k]) = (full.Tubes.ReynoldsPerFlow[j], full.Tubes.Weight[j], full.Tubes.Roughness[j]);
            rise[k] = full.Rise[j];
            constant[k] = FrontLosses.Constant(problem, geometry, line, j);
            bends += geometry.BendStart[j + 1] - geometry.BendStart[j];
            throats += geometry.ThroatStart[j + 1] - geometry.ThroatStart[j];
            if (HasLeg(geometry, line, j)) legs++;
        }
        return new Network
        {
            Count = runs.Length,
            Parent = parent,
            Tubes = new(runs.Length, null, perFlow, weight, rough),
            Throats = WettedParts.Throats(geometry, runs, NetworkBuilder.Padded(throats), throats),
            Constant = constant,
            Rise = rise,
            Bends = WettedParts.Bends(geometry, runs, NetworkBuilder.Padded(bends), bends),
            Tees = WettedParts.Legs(geometry, line, runs, legs),
            Nozzles = outlets.ConvertAll(outlet => outlet.Point).ToArray(),
            NozzleArea = outlets.ConvertAll(outlet => outlet.Nozzle < 0 ? problem.Area[outlet.Run] : full.NozzleArea[outlet.Nozzle]).ToArray(),
            HasRise = full.HasRise,
        };
    }

    /// <summary>Whether a run still loses pressure in the tee by which it leaves: gas in it, or behind it, brings none.</summary>
    /// <param name="geometry">The line.</param>
    /// <param name="line">How far the fronts have come.</param>
    /// <param name="run">The run.</param>
    public static bool HasLeg(LineGeometry geometry, LineState line, int run) => geometry.Leg[run] >= 0 && !line.IsSwept[run];
}
