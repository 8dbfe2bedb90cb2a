namespace FlowCalc.Networks;

/// <summary>
/// A rooted tree as flat arrays in solve order: run j feeds point j, parents before children. Run 0 leads from the reservoir to the supply
/// point. Geometry only; the fluid comes with the solve, so one network serves every agent and temperature.
/// </summary>
internal sealed class Network
{
    /// <summary>Number of points, and of runs, 1 or more.</summary>
    public required int Count { get; init; }

    /// <summary>Point that run j leaves, below j; −1 for run 0.</summary>
    public required int[] Parent { get; init; }

    /// <summary>Straight tube of each run, and its padding.</summary>
    public required FrictionSegments Tubes { get; init; }

    /// <summary>Friction inside fittings tighter than their tube.</summary>
    public required FrictionSegments Throats { get; init; }

    /// <summary>Sum of K / (2 A²) of run j that does not depend on Reynolds number, 1/m⁴, padded as <see cref="Tubes"/>.</summary>
    public required double[] Constant { get; init; }

    /// <summary>Height of point j over the point that feeds it, m.</summary>
    public required double[] Rise { get; init; }

    /// <summary>Bends.</summary>
    public required BendSet Bends { get; init; }

    /// <summary>Tee legs.</summary>
    public required TeeLegs Tees { get; init; }

    /// <summary>Points that are nozzles, in rising order.</summary>
    public required int[] Nozzles { get; init; }

    /// <summary>Area times discharge coefficient of each nozzle, m², in the order of <see cref="Nozzles"/>.</summary>
    public required double[] NozzleArea { get; init; }

    /// <summary>True where any point lies higher or lower than the one before it: only then can a nozzle stay dry.</summary>
    public required bool HasRise { get; init; }

    /// <summary>The same tree with constant losses of its own, to be changed.</summary>
    public Network WithOwnConstants() => With(Rise, [.. Constant]);

    /// <summary>The same tree in another attitude.</summary>
    /// <param name="rise">Height of each point over the point that feeds it, m.</param>
    public Network WithRise(double[] rise) => With(rise, Constant);

    /// <summary>The same tree with other nozzles.</summary>
    /// <param name="area">Area times discharge coefficient of each nozzle, m², in the order of <see cref="Nozzles"/>.</param>
    public Network WithNozzles(double[] area) => With(Rise, Constant, area);

    Network With(double[] rise, double[] constant, double[]? nozzleArea = null) => new()
    {
        Count = Count,
        Parent = Parent,
        Tubes = Tubes,
        Throats = Throats,
        Constant = constant,
        Rise = rise,
        Bends = Bends,
        Tees = Tees,
        Nozzles = Nozzles,
        NozzleArea = nozzleArea ?? NozzleArea,
        HasRise = Array.Exists(rise, z => z != 0),
    };
}
