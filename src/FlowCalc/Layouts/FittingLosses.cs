using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Layouts;

/// <summary>What the fittings of a run lose. A flow coefficient stands for the whole fitting; a loss coefficient for its turn, beside the loss of a tighter bore.</summary>
internal static class FittingLosses
{
    const double LengthWhereNoneIsGiven = 2;

    /// <summary>Sum of K / (2 A²) of a run's fittings and of its extra coefficient, 1/m⁴.</summary>
    /// <param name="run">The run.</param>
    /// <param name="bore">Bore of its tube, m.</param>
    public static double Constant(Run run, double bore)
    {
        var perCoefficient = Resistance.PerCoefficient(bore);
        var sum = run.LossCoefficient * perCoefficient;
        foreach (var placed in run.Fittings)
            sum += placed.Count * Constant(placed.Fitting, bore, perCoefficient);
        return sum;
    }

    /// <summary>Adds the friction inside fittings tighter than their tube.</summary>
    /// <param name="builder">Where to.</param>
    /// <param name="node">The run in solve order.</param>
    /// <param name="run">The run.</param>
    /// <param name="bore">Bore of its tube, m.</param>
    public static void AddThroats(NetworkBuilder builder, int node, Run run, double bore)
    {
        foreach (var placed in run.Fittings)
            if (placed.Fitting is { Kv: null, Bore: { } own, Length: { } length } && IsTighter(own.Meters, bore) && length.Meters > 0)
                builder.AddThroat(node, own.Meters, placed.Count * length.Meters / own.Meters, run.Tube.Roughness.Meters / own.Meters);
    }

    static double Constant(Fitting fitting, double bore, double perCoefficient)
    {
        if (fitting.Kv is { } kv) return Resistance.OfFlowCoefficient(kv);
        var own = OwnBore(fitting, bore);
        var turn = fitting.LossCoefficient is { } coefficient ? coefficient * perCoefficient
            : fitting.Kind == Fitting.Elbow ? Mitre.Coefficient(fitting.Angle?.Radians ?? Math.PI / 2) * Resistance.PerCoefficient(own)
            : 0;
        if (own == bore) return turn;
        return turn + ReducedBore.Loss(own / bore, LengthOverBore(fitting, own)).Constant * perCoefficient;
    }

    /// <summary>Bore of a fitting, m: its own where that is tighter than the tube's, else the tube's.</summary>
    /// <param name="fitting">The fitting.</param>
    /// <param name="bore">Bore of its tube, m.</param>
    public static double OwnBore(Fitting fitting, double bore) => fitting.Bore is { } given && IsTighter(given.Meters, bore) ? given.Meters : bore;

    /// <summary>Length of a fitting over its bore; of one whose length is not given, just long enough for the flow to fill it.</summary>
    /// <param name="fitting">The fitting.</param>
    /// <param name="own">Its bore, m.</param>
    public static double LengthOverBore(Fitting fitting, double own) => fitting.Length is { } length ? length.Meters / own : LengthWhereNoneIsGiven;

    /// <summary>Whether a bore is tighter than another; one worked out from a diameter and a wall may differ from one that was given by a last digit.</summary>
    /// <param name="own">The bore, m.</param>
    /// <param name="bore">The other, m.</param>
    public static bool IsTighter(double own, double bore) => own < bore * (1 - 1e-9);
}
