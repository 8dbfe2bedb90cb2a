namespace FlowCalc.Networks;

/// <summary>What a solve holds for one network, reusable: a solve that starts from the last answer allocates nothing.</summary>
internal sealed class SteadyState
{
    /// <summary>Makes room for a network.</summary>
    /// <param name="network">The network; the state serves no other.</param>
    public SteadyState(Network network)
    {
        Network = network;
        var padded = network.Tubes.ReynoldsPerFlow.Length;
        Flow = new double[padded];
        Potential = new double[network.Count];
        Root = Filled(padded);
        ThroatRoot = Filled(network.Throats.ReynoldsPerFlow.Length);
        BendRoot = Filled(network.Bends.ReynoldsPerFlow.Length);
        LastBends = new BendMemory(network.Bends.ReynoldsPerFlow.Length);
        Loss = new double[padded];
        Slope = new double[padded];
        Cross = new double[network.Count];
        Lines = new RunLine[network.Count];
        Sums = new SubtreeSum[network.Count];
        Array.Fill(Sums, SubtreeSum.Empty);
        IsClosed = new bool[network.Nozzles.Length];
    }

    /// <summary>The network.</summary>
    public Network Network { get; }

    /// <summary>Mass flow of each run, kg/s, padded.</summary>
    public double[] Flow { get; }

    /// <summary>Potential at each point, Pa (for a liquid its total gauge pressure): at the end of the run that feeds it.</summary>
    public double[] Potential { get; }

    /// <summary>True for a nozzle that no flow leaves, since height alone puts it under the surroundings.</summary>
    public bool[] IsClosed { get; }

    /// <summary>True where <see cref="Flow"/> and <see cref="Potential"/> hold an earlier answer to start from.</summary>
    public bool IsWarm { get; set; }

    internal double[] Root { get; }

    internal double[] ThroatRoot { get; }

    internal double[] BendRoot { get; }

    /// <summary>What the bends lost when they were last worked out.</summary>
    internal BendMemory LastBends { get; }

    /// <summary>Loss of each run at the present flows, Pa of potential.</summary>
    internal double[] Loss { get; }

    /// <summary>Derivative of the loss by the run's own flow.</summary>
    internal double[] Slope { get; }

    /// <summary>Derivative of the loss by the flow into the point that the run leaves.</summary>
    internal double[] Cross { get; }

    internal RunLine[] Lines { get; }

    internal SubtreeSum[] Sums { get; }

    /// <summary>Starts from the answer of a network of the same shape, whose sizes may be a little otherwise.</summary>
    /// <param name="other">Its state; left as it is.</param>
    public void StartFrom(SteadyState other)
    {
        other.Flow.CopyTo(Flow, 0);
        other.Potential.CopyTo(Potential, 0);
        other.IsClosed.CopyTo(IsClosed, 0);
        other.Root.CopyTo(Root, 0);
        if (other.ThroatRoot.Length == ThroatRoot.Length) other.ThroatRoot.CopyTo(ThroatRoot, 0);
        if (other.BendRoot.Length == BendRoot.Length) other.BendRoot.CopyTo(BendRoot, 0);
        IsWarm = other.IsWarm;
    }

    static double[] Filled(int length)
    {
        var roots = new double[length];
        Array.Fill(roots, FrictionKernel.StartRoot);
        return roots;
    }
}
