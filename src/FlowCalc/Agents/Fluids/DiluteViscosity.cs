using System.Collections.Immutable;

namespace FlowCalc.Agents;

/// <summary>Viscosity of a thin gas.</summary>
/// <remarks>
/// Nitrogen and argon by <see cref="GasTransport"/>; the others by Chung, Lee, Starling 1984 (from memory) from critical temperature, critical volume and acentric
/// factor, an estimate good to some per cent (the tests hold it beside tabulated vapours); blends by the rule of Wilke 1950 (from memory). Friction in turbulent
/// tubes follows the viscosity by about its fifth root.
/// </remarks>
internal sealed class DiluteViscosity
{
    // Cubic pieces over what discharges come to, within 1e-6 of the law; outside of them the law itself.
    const double Coldest = 60;
    const double Step = 5;
    const int Pieces = 120;

    readonly ImmutableArray<(double Part, double MolarMass, Func<double, double> Of)> components;

    // Of each node the viscosity and its slope times the step.
    readonly double[] nodes = new double[2 * (Pieces + 1)];

    DiluteViscosity(ImmutableArray<(double Part, double MolarMass, Func<double, double> Of)> components)
    {
        this.components = components;
        const double hair = 1e-2;
        for (var i = 0; i <= Pieces; i++)
        {
            var temperature = Coldest + i * Step;
            (nodes[2 * i], nodes[2 * i + 1]) = (Law(temperature), Step * (Law(temperature + hair) - Law(temperature - hair)) / (2 * hair));
        }
    }

    /// <summary>Of a pure fluid.</summary>
    /// <param name="id">The fluid.</param>
    /// <param name="equation">Its equation.</param>
    public static DiluteViscosity Of(string id, HelmholtzEquation equation) => new([One(1, id, equation)]);

    /// <summary>Of a blend.</summary>
    /// <param name="components">Molar part, id and equation of each component.</param>
    public static DiluteViscosity Of(IEnumerable<(double Part, string Id, HelmholtzEquation Equation)> components) =>
        new([.. components.Select(component => One(component.Part, component.Id, component.Equation))]);

    /// <summary>Dynamic viscosity, Pa·s.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    public double At(double temperature)
    {
        var x = (temperature - Coldest) / Step;
        if (!(x >= 0 && x < Pieces)) return Law(temperature);
        var i = (int)x;
        var u = x - i;
        var rest = 1 - u;
        var piece = nodes.AsSpan(2 * i, 4);
        return rest * rest * ((1 + 2 * u) * piece[0] + u * piece[1]) + u * u * ((3 - 2 * u) * piece[2] - rest * piece[3]);
    }

    /// <summary>The same by the law itself.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    public double Law(double temperature)
    {
        if (components.Length == 1) return components[0].Of(temperature);
        double sum = 0;
        foreach (var one in components)
        {
            var own = one.Of(temperature);
            double weight = 0;
            foreach (var other in components)
            {
                var mass = other.MolarMass / one.MolarMass;
                var root = 1 + Math.Sqrt(own / other.Of(temperature)) * Math.Sqrt(Math.Sqrt(mass));
                weight += other.Part * root * root / Math.Sqrt(8 * (1 + 1 / mass));
            }
            sum += one.Part * own / weight;
        }
        return sum;
    }

    static (double Part, double MolarMass, Func<double, double> Of) One(double part, string id, HelmholtzEquation equation) => (part, equation.MolarMass, id switch
    {
        "nitrogen" => GasTransport.Nitrogen.Viscosity,
        "argon" => GasTransport.Argon.Viscosity,
        _ => temperature => Chung(equation, temperature),
    });

    static double Chung(HelmholtzEquation equation, double temperature)
    {
        // Neufeld's collision integral at T* = 1.2593·T/Tc; molar mass in g/mol and critical volume in cm³/mol give µP.
        var reduced = 1.2593 * temperature / equation.ReducingTemperature;
        var omega = 1.16145 * Math.Pow(reduced, -0.14874) + 0.52487 * Math.Exp(-0.7732 * reduced) + 2.16178 * Math.Exp(-2.43787 * reduced);
        var volume = 1e6 * equation.MolarMass / equation.ReducingDensity;
        return 1e-7 * 40.785 * (1 - 0.2756 * equation.AcentricFactor) * Math.Sqrt(1e3 * equation.MolarMass * temperature) / (Math.Cbrt(volume * volume) * omega);
    }
}
