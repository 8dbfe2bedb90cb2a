namespace FlowCalc.Discharge;

/// <summary>Where each quantity stands in the vector that is integrated.</summary>
/// <param name="nozzles">Number of nozzles.</param>
/// <param name="runs">Number of runs.</param>
internal readonly struct StateVector(int nozzles, int runs)
{
    /// <summary>Volume of the gas of one bottle, m³: in the bottle and, once the dip tube draws gas, in the line.</summary>
    public const int GasVolume = 0;

    /// <summary>Temperature of the gas, K.</summary>
    public const int GasTemperature = 1;

    /// <summary>Temperature of the dry wall, K.</summary>
    public const int WallTemperature = 2;

    /// <summary>Mass of the gas of one bottle, kg.</summary>
    public const int GasMass = 3;

    /// <summary>First of the masses that the nozzles have delivered, kg.</summary>
    public const int Delivered = 4;

    /// <summary>First of the runs' fronts of liquid, parts of a run.</summary>
    public int Heads => Delivered + nozzles;

    /// <summary>First of the runs' fronts of gas, parts of a run.</summary>
    public int Tails => Heads + runs;

    /// <summary>Length of the vector.</summary>
    public int Length => Tails + runs;

    /// <summary>The delivered masses of a vector.</summary>
    public Span<double> DeliveredOf(Span<double> y) => y.Slice(Delivered, nozzles);

    /// <summary>The fronts of liquid of a vector.</summary>
    public Span<double> HeadsOf(Span<double> y) => y.Slice(Heads, runs);

    /// <summary>The fronts of gas of a vector.</summary>
    public Span<double> TailsOf(Span<double> y) => y.Slice(Tails, runs);
}
