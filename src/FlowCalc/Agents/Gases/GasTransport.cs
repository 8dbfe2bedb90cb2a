namespace FlowCalc.Agents;

/// <summary>Viscosity and conductivity of a dilute gas.</summary>
/// <remarks>
/// Lemmon, Jacobsen, Int. J. Thermophys. 25 (2004) 21, dilute parts, coefficients from memory: viscosity by the collision integral of their eq. 2 and 3,
/// conductivity N1·η + N2·τ^t2 + N3·τ^t3. They give the paper's
/// check values at 100 and 300 K to all six figures. At 20 °C and 100 bar nitrogen and argon are an eighth more viscous (the paper's full equation).
/// </remarks>
public sealed class GasTransport
{
    // ln Ω = Σ b_i (ln T*)^i.
    static readonly double[] Collision = [0.431, -0.4623, 0.08406, 0.005341, -0.00331];

    readonly double molarMass, size, energy, criticalTemperature;
    readonly (double Own, double Second, double SecondPower, double Third, double ThirdPower) conductivity;

    GasTransport(double molarMass, double size, double energy, double criticalTemperature, (double Own, double Second, double SecondPower, double Third, double ThirdPower) conductivity) =>
        (this.molarMass, this.size, this.energy, this.criticalTemperature, this.conductivity) = (molarMass, size, energy, criticalTemperature, conductivity);

    /// <summary>Nitrogen.</summary>
    public static GasTransport Nitrogen { get; } = new(28.01348, 0.3656, 98.94, 126.192, (1.511, 2.117, -1, -3.332, -0.7));

    /// <summary>Argon.</summary>
    public static GasTransport Argon { get; } = new(39.948, 0.335, 143.2, 150.687, (0.8158, -0.432, -0.77, 0, 0));

    /// <summary>Dry air.</summary>
    public static GasTransport Air { get; } = new(28.9586, 0.360, 103.3, 132.6312, (1.308, 1.405, -1.1, -1.036, -0.3));

    /// <summary>Dynamic viscosity.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    /// <returns>Pa·s.</returns>
    public double Viscosity(double temperature)
    {
        var log = Math.Log(temperature / energy);
        var omega = Math.Exp(Collision[0] + log * (Collision[1] + log * (Collision[2] + log * (Collision[3] + log * Collision[4]))));
        return 1e-6 * 0.0266958 * Math.Sqrt(molarMass * temperature) / (size * size * omega);
    }

    /// <summary>Thermal conductivity.</summary>
    /// <param name="temperature">Temperature, K, over 0.</param>
    /// <returns>W/(m·K).</returns>
    public double Conductivity(double temperature)
    {
        var tau = criticalTemperature / temperature;
        var (own, second, secondPower, third, thirdPower) = conductivity;
        return 1e-3 * (own * 1e6 * Viscosity(temperature) + second * Math.Pow(tau, secondPower) + third * Math.Pow(tau, thirdPower));
    }
}
