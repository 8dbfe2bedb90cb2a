using FlowCalc.Quantities;

namespace FlowCalc.Api.Answers;

/// <summary>The line from SI to one unit, for the many values of one kind in an answer.</summary>
/// <param name="kind">What the values measure.</param>
/// <param name="system">The system to write in.</param>
internal sealed class UnitScale(QuantityKind kind, UnitSystem system)
{
    readonly (double Factor, double Offset, string Unit) line = QuantityWriter.Scale(kind, system);

    /// <summary>The unit's symbol.</summary>
    public string Unit => line.Unit;

    /// <summary>Writes an SI value; a pressure gauge.</summary>
    public Quantity Of(double si)
    {
        var value = si * line.Factor + line.Offset;
        return double.IsFinite(value) ? new Quantity(value, line.Unit) : throw new NotFiniteException(kind.ToString());
    }
}
