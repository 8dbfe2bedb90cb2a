using FlowCalc.Bottles;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Upkeep;

/// <summary>What a weighing says of the agent.</summary>
/// <param name="Stamped">Gross mass of the full bottle.</param>
/// <param name="Gross">Gross mass that was found.</param>
/// <param name="Lost">Agent lost, as a part of the fill; under 0 where the bottle is heavier.</param>
/// <param name="Doubt">The step of the scale as a part of the fill; null where not given.</param>
public sealed record WeightCheck(Mass Stamped, Mass Gross, double Lost, double? Doubt)
{
    /// <summary>Holds a weighing against a bottle: (stamped − found)/fill.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="weighing">The weighing.</param>
    /// <exception cref="ArgumentException">Neither the weighing states a stamped mass nor the bottle its empty one.</exception>
    public static WeightCheck Of(Bottle bottle, Weighing weighing)
    {
        ArgumentNullException.ThrowIfNull(bottle);
        ArgumentNullException.ThrowIfNull(weighing);
        var stamped = weighing.Stamped ?? bottle.EmptyMass + bottle.Fill ?? throw new ArgumentException("No mass of the full bottle is known.", nameof(weighing));
        var fill = bottle.Fill.Kilograms;
        return new(stamped, weighing.Gross, (stamped - weighing.Gross).Kilograms / fill, weighing.Step is { } step ? step.Kilograms / fill : null);
    }
}
