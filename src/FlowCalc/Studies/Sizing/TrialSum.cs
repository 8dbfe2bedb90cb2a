namespace FlowCalc.Studies.Sizing;

/// <summary>Adds up nozzle by nozzle how far a flow is from the wanted shares.</summary>
/// <param name="total">Flow of all nozzles together, kg/s.</param>
internal struct TrialSum(double total)
{
    // A nozzle that gets nothing counts as one that gets a thousandth of what is wanted.
    const double LeastRatio = 1e-3;

    double worst;
    double spread;
    double least = double.PositiveInfinity;

    /// <summary>Adds a nozzle.</summary>
    /// <param name="flow">Its flow, kg/s.</param>
    /// <param name="wanted">Its wanted share; 0 for none.</param>
    /// <param name="pressure">Its absolute pressure, Pa.</param>
    public void Add(double flow, double wanted, double pressure)
    {
        least = Math.Min(least, pressure);
        if (!(wanted > 0)) return;
        var ratio = total > 0 ? flow / (total * wanted) : 0;
        worst = Math.Max(worst, Math.Abs(ratio - 1));
        var logarithm = Math.Log(Math.Max(ratio, LeastRatio));
        spread += logarithm * logarithm;
    }

    /// <summary>What came of it.</summary>
    public readonly Trial Of(byte[] choices, SizingModel model) => new(choices, total, worst, spread, least, model.Sum(choices), model.Changes(choices));
}
