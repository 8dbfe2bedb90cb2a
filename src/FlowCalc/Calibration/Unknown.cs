using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>An unknown as the fit moves it: over a variable in which what is read is nearly straight.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Nozzles">The make of nozzle; null for every other unknown.</param>
/// <param name="Least">Least of the variable.</param>
/// <param name="Start">Where the search starts, within the range.</param>
/// <param name="Most">Greatest of the variable.</param>
/// <param name="Size">Size of the unknown, SI, at a value of the variable; rising or falling throughout.</param>
sealed record Unknown(UnknownKind Kind, NozzleGroup? Nozzles, double Least, double Start, double Most, Func<double, double> Size)
{
    const double LargestRatio = 3;

    // A search that starts on a bound stays there.
    const double OffBound = 0.01;

    /// <summary>A factor, between a third and three where nothing else is said; the variable is its logarithm.</summary>
    public static Unknown Factor(UnknownKind kind, NozzleGroup? nozzles = null, double least = 1 / LargestRatio, double most = LargestRatio) =>
        new(kind, nozzles, Math.Log(least), Within(Math.Log(least), Math.Log(most)), Math.Log(most), Math.Exp);

    static double Within(double least, double most) => most - least > 2 * OffBound ? Math.Clamp(0, least + OffBound, most - OffBound) : (least + most) / 2;

    /// <summary>A roughness up to the greatest that a document may state; the variable is ln(1 + ε/5 µm), since below some micrometres the flow hardly knows it.</summary>
    /// <param name="most">The greatest, m.</param>
    public static Unknown RoughnessTo(double most)
    {
        const double smooth = 5e-6;
        var end = Math.Log(1 + most / smooth);
        return new(UnknownKind.Roughness, null, 0, end / 3, end, at => smooth * (Math.Exp(at) - 1));
    }

    /// <summary>A loss in a run; the variable is the part s of its flow that would be left at an unchanged drop, K = K₀ (1/s² − 1).</summary>
    /// <param name="whole">K₀: the drop from the supply to the surroundings over the velocity head of the run as drawn.</param>
    /// <param name="most">The greatest that a document may state of the run besides its own.</param>
    public static Unknown Loss(double whole, double most)
    {
        var least = Math.Max(LeastOpen, 1 / Math.Sqrt(1 + most / whole));
        return new(UnknownKind.LossCoefficient, null, least, least < 0.8 ? 0.8 : (1 + least) / 2, 1, at => Math.Min(whole * (1 / (at * at) - 1), most));
    }

    /// <summary>Part of the flow below which a run is not told from one that is shut.</summary>
    public const double LeastOpen = 0.01;
}
