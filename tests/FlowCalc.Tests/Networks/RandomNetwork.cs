using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>Random networks, from plausible to hostile, drawn from a seed.</summary>
internal sealed class RandomNetwork
{
    readonly Random _random;
    readonly int[] _above;
    readonly int[] _children;

    public RandomNetwork(int seed, bool hasRises, bool hasTees, bool isWild, double rise = 20)
    {
        _random = new Random(seed);
        var count = 2 + _random.Next(40);
        _above = new int[count];
        _children = new int[count];
        _above[0] = -1;
        for (var j = 1; j < count; j++)
        {
            do _above[j] = j == 1 ? 0 : 1 + _random.Next(j - 1);
            while (j > 1 && _children[_above[j]] == 2);
            _children[_above[j]]++;
        }
        Area = new double[count];
        Density = 800 + 400 * _random.NextDouble();
        Viscosity = Spread(5e-4, 0.1);
        Pressure = Ambient + Spread(1e4, 1e7);
        Network = Build(hasRises ? rise : 0, hasTees, isWild);
    }

    public const double Ambient = 101_325;

    public Network Network { get; }

    /// <summary>Area of each run's bore, m².</summary>
    public double[] Area { get; }

    public double Density { get; }

    public double Viscosity { get; }

    /// <summary>Absolute pressure of the reservoir, Pa.</summary>
    public double Pressure { get; }

    public LiquidPath Path => new(Density, Viscosity, Ambient);

    public (SteadyState State, SolveReport Report) Solve(double? pressure = null)
    {
        var state = new SteadyState(Network);
        return (state, SteadySolver.Solve(state, Path, pressure ?? Pressure, CancellationToken.None));
    }

    double Spread(double low, double high) => low * Math.Exp(_random.NextDouble() * Math.Log(high / low));

    Network Build(double most, bool hasTees, bool isWild)
    {
        var bores = Array.ConvertAll(_above, _ => isWild ? Spread(1.5e-3, 15e-3) : 1e-3 * (4 + 8 * _random.NextDouble()));
        for (var j = 0; j < bores.Length; j++) Area[j] = Math.PI / 4 * bores[Math.Max(j, 1)] * bores[Math.Max(j, 1)];
        var builder = new NetworkBuilder(_above.Length);
        builder.AddRun(-1, new RunGeometry(bores[1], 0, 0, 0, 0));
        var taken = new int[_above.Length];
        for (var j = 1; j < _above.Length; j++)
        {
            var (above, bore) = (_above[j], bores[j]);
            var length = _random.Next(5) == 0 ? 0 : Spread(0.02, 20);
            var rise = most > 0 ? most * (_random.NextDouble() - 0.4) : 0;
            var constant = _random.Next(3) == 0 ? 5 * _random.NextDouble() / (2 * Math.Pow(Math.PI / 4 * bore * bore, 2)) : 0;
            builder.AddRun(above, new RunGeometry(bore, length, 0.02 * _random.NextDouble(), rise, constant));
            if (hasTees && above > 0 && _children[above] == 2) builder.AddTeeLeg(j, Leg(above, bore / bores[above], taken[above]++ == 0), bores[above]);
            if (_random.Next(2) == 0 && 4.5 * bore < length) builder.AddBend(j, SmoothBend.Shape(1.5, 3), 1);
            if (_children[j] == 0 && (j == _above.Length - 1 || _random.Next(8) != 0))
                builder.AddNozzle(j, Orifice.EffectiveArea(isWild ? Spread(0.5e-3, 10e-3) : 1e-3 * (0.8 + 2 * _random.NextDouble()), 0.8));
        }
        return builder.Build();
    }

    static TeeLeg Leg(int tee, double boreRatio, bool isFirst)
    {
        var body = (TeeBody)(tee % 2);
        if (tee % 3 == 0) return BullheadTee.Outlet(boreRatio, body);
        return isFirst ? RunFedTeeShape.Run(body) : RunFedTeeShape.Branch(boreRatio, 0, body);
    }
}
