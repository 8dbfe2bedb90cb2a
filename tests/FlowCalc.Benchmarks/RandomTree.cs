namespace FlowCalc.Benchmarks;

/// <summary>
/// A random tree of tubes with nozzles at its leaves, mostly turbulent: bores grow with the nozzles behind them, as a designer would choose
/// them. Points are numbered depth first. Point 0 is the supply; run j feeds point j.
/// </summary>
internal sealed class RandomTree
{
    RandomTree(int[] parent, Random random, bool hasTees)
    {
        Parent = parent;
        HasTees = hasTees;
        var count = parent.Length;
        Children = new int[count];
        Leaves = new int[count];
        for (var j = count - 1; j > 0; j--)
        {
            if (Children[j] == 0) Leaves[j] = 1;
            Children[parent[j]]++;
            Leaves[parent[j]] += Leaves[j];
        }
        // Figures as a person would write them: millimetres, hundredths of a bore, whole degrees.
        Length = Values(count, () => Math.Round(0.3 + 1.5 * random.NextDouble(), 3));
        LossCoefficient = Values(count, () => Math.Round(0.2 + random.NextDouble(), 2));
        NozzleDiameter = Values(count, () => Math.Round(1.2e-3 + 0.6e-3 * random.NextDouble(), 5));
        BendDegrees = Values(count, () => random.Next(30, 91));
        Bore = new double[count];
        for (var j = 1; j < count; j++)
        {
            Bore[j] = Math.Round(4e-3 * Math.Pow(Leaves[j], 0.42) * (0.95 + 0.1 * random.NextDouble()), 5);
            // Room for a bend of three bores.
            if (hasTees) Length[j] = Math.Max(Length[j], Math.Round(6 * Bore[j], 3));
        }
    }

    /// <summary>Point that feeds point j.</summary>
    public int[] Parent { get; }

    /// <summary>True where every fork is a tee and every run has a bend.</summary>
    public bool HasTees { get; }

    public int[] Children { get; }

    public int[] Leaves { get; }

    public double[] Length { get; }

    public double[] Bore { get; }

    public double[] LossCoefficient { get; }

    public double[] NozzleDiameter { get; }

    public double[] BendDegrees { get; }

    /// <summary>Wall roughness of every tube, m.</summary>
    public static double Roughness => 1.5e-6;

    /// <summary>Discharge coefficient of every nozzle.</summary>
    public static double DischargeCoefficient => 0.82;

    /// <summary>A tree in which every point hangs on a random earlier one.</summary>
    public static RandomTree Plain(int points, int seed)
    {
        var random = new Random(seed);
        var above = new int[points];
        above[0] = -1;
        // One run leaves the supply; any number leaves a junction.
        for (var i = 1; i < points; i++) above[i] = i == 1 ? 0 : 1 + random.Next(i - 1);
        return new(DepthFirst(above), random, hasTees: false);
    }

    /// <summary>A tree of tees, each with two runs out, and of plain points with one.</summary>
    public static RandomTree Tees(int points, int seed)
    {
        var random = new Random(seed);
        var above = new int[points];
        above[0] = -1;
        var open = new List<(int Point, int Children)> { (0, 1) };
        for (var i = 1; i < points; i++)
        {
            var at = random.Next(open.Count);
            var (point, children) = open[at];
            above[i] = point;
            open[at] = (point, children + 1);
            if (children + 1 >= 2)
            {
                open[at] = open[^1];
                open.RemoveAt(open.Count - 1);
            }
            open.Add((i, 0));
        }
        return new(DepthFirst(above), random, hasTees: true);
    }

    static double[] Values(int count, Func<double> next)
    {
        var values = new double[count];
        for (var j = 0; j < count; j++) values[j] = next();
        return values;
    }

    static int[] DepthFirst(int[] above)
    {
        var children = new List<int>[above.Length];
        for (var i = 0; i < above.Length; i++) children[i] = [];
        for (var i = 1; i < above.Length; i++) children[above[i]].Add(i);
        var parent = new int[above.Length];
        var waiting = new Stack<(int Old, int Above)>([(0, -1)]);
        for (var next = 0; waiting.TryPop(out var at); next++)
        {
            parent[next] = at.Above;
            foreach (var child in children[at.Old]) waiting.Push((child, next));
        }
        return parent;
    }
}
