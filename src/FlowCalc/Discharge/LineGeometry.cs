using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>What the line is apart from any instant: who feeds whom, and what lies ahead of each front.</summary>
internal sealed class LineGeometry
{
    /// <summary>Works out what a problem's network implies.</summary>
    /// <param name="problem">The problem.</param>
    public LineGeometry(DischargeProblem problem)
    {
        Network = problem.Network;
        var count = Network.Count;
        NozzleOf = new int[count];
        Array.Fill(NozzleOf, -1);
        NozzleAreaAhead = new double[count];
        VolumeAhead = new double[count];
        BendStart = Starts(Network.Bends.Run, Network.Bends.Count, count);
        ThroatStart = Starts(Network.Throats.Run!, Network.Throats.Count, count);
        Leg = new int[count];
        Array.Fill(Leg, -1);
        for (var i = 0; i < Network.Tees.Run.Length; i++) Leg[Network.Tees.Run[i]] = i;
        for (var i = 0; i < Network.Nozzles.Length; i++)
        {
            NozzleOf[Network.Nozzles[i]] = i;
            NozzleAreaAhead[Network.Nozzles[i]] = Network.NozzleArea[i];
        }
        for (var j = count - 1; j >= 0; j--)
        {
            VolumeAhead[j] += problem.Volume[j];
            if (j == 0) break;
            NozzleAreaAhead[Network.Parent[j]] += NozzleAreaAhead[j];
            VolumeAhead[Network.Parent[j]] += VolumeAhead[j];
        }
    }

    /// <summary>The line.</summary>
    public Network Network { get; }

    /// <summary>Index in <see cref="Network.Nozzles"/> of the nozzle at a run's end; −1 for none.</summary>
    public int[] NozzleOf { get; }

    /// <summary>Areas times discharge coefficients of all nozzles behind a run's start, m².</summary>
    public double[] NozzleAreaAhead { get; }

    /// <summary>Volume of a run and all that it feeds, m³.</summary>
    public double[] VolumeAhead { get; }

    /// <summary>First of each run's bends in <see cref="Network.Bends"/>, and the number of bends behind the last.</summary>
    public int[] BendStart { get; }

    /// <summary>First of each run's throats in <see cref="Network.Throats"/>, and the number of throats behind the last.</summary>
    public int[] ThroatStart { get; }

    /// <summary>Tee leg by which a run leaves; −1 for none.</summary>
    public int[] Leg { get; }

    static int[] Starts(int[] owners, int items, int runs)
    {
        var starts = new int[runs + 1];
        for (var i = 0; i < items; i++) starts[owners[i] + 1]++;
        for (var j = 0; j < runs; j++) starts[j + 1] += starts[j];
        return starts;
    }
}
