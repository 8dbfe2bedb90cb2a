using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Networks;

namespace FlowCalc.Tests.ClosedForms.Discharge;

/// <summary>A discharge with fixed loss coefficients, an ideal cushion and no film, as the closed forms take it.</summary>
sealed class TestDischarge
{
    public const double Ambient = 101_325;
    public static readonly IdealGas Gas = new(296.8, 1.4);

    readonly NetworkBuilder builder = new(8);
    readonly List<double> volumes = [];
    readonly List<double> areas = [];

    public double Density { get; init; } = 1000;

    public double LiquidVolume { get; init; } = 0.004;

    public double GasVolume { get; init; } = 0.002;

    public double Pressure { get; init; } = 1.5e6;

    public double Tolerance { get; init; } = 1e-10;

    public double EndRatio { get; init; } = 1.05;

    public static double Disc(double diameter) => Math.PI / 4 * diameter * diameter;

    /// <summary>The lossless outlet, point 0.</summary>
    public TestDischarge()
    {
        builder.AddRun(-1, new RunGeometry(0.05, 0, 0, 0, 0));
        volumes.Add(0);
        areas.Add(Disc(0.05));
    }

    /// <summary>A tube of a fixed friction factor, which is spread along it, and a coefficient that acts on what enters.</summary>
    public int Tube(int parent, double bore, double length, double friction, double coefficient, double rise = 0)
    {
        var run = builder.AddRun(parent, new RunGeometry(bore, 0, 0, rise, coefficient * Resistance.PerCoefficient(bore)));
        if (friction > 0) builder.AddBend(run, new(0, friction * length / bore, 0, 1), 1);
        volumes.Add(Disc(bore) * length);
        areas.Add(Disc(bore));
        return run;
    }

    public TestDischarge Nozzle(int point, double diameter, double dischargeCoefficient)
    {
        builder.AddNozzle(point, dischargeCoefficient * Disc(diameter));
        return this;
    }

    /// <summary>The same line behind an outlet that has a resistance.</summary>
    public Network Resisted(double resistance)
    {
        var network = builder.Build();
        network.Constant[0] += resistance;
        return network;
    }

    public DischargeProblem Problem(CushionProcess process, double exponent = 1, double conductance = 0, double temperature = 293.15) => new()
    {
        Network = builder.Build(),
        Volume = [.. volumes],
        Area = [.. areas],
        Liquid = new LiquidPath(Density, 1e-3, Ambient),
        Ambient = Ambient,
        Cushion = new Cushion
        {
            Gas = Gas,
            Process = process,
            Temperature = temperature,
            Density = Pressure / (Gas.GasConstant * temperature),
            Exponent = exponent,
            Conductance = conductance,
        },
        BottleVolume = LiquidVolume + GasVolume,
        LiquidVolume = LiquidVolume,
        Tolerance = Tolerance,
        EndRatio = EndRatio,
        Thresholds = [0.95 * LiquidVolume * Density],
    };

    public static DischargeCourse Run(DischargeProblem problem)
    {
        var course = DischargeRun.Of(problem, CancellationToken.None);
        Assert.Null(course.Failure);
        Assert.True(course.MassDefect < 1e-9, $"mass out by {course.MassDefect}");
        return course;
    }
}
