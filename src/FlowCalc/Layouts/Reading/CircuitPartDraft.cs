using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>What every part of a circuit has.</summary>
/// <param name="Name">Its name.</param>
/// <param name="From">Index of the node of its first end; −1 where it could not be read.</param>
/// <param name="To">Index of the node of its second end; −1 where it could not be read.</param>
/// <param name="Pointer">Its JSON pointer.</param>
readonly record struct CircuitPartDraft(string Name, int From, int To, string Pointer)
{
    /// <summary>Its resistance; a usual one, listed as an assumption, where it is left out.</summary>
    public ElectricResistance Resistance(ReadingContext context, in Members<CircuitPartField> members, double usual, string source)
    {
        if (members.Has(CircuitPartField.Resistance)) return Given(context, members);
        context.Assumptions.Add(Pointer + "/resistance", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{usual * 1e3:0.###} mohm"), source);
        return ElectricResistance.FromOhms(usual);
    }

    /// <summary>Its resistance, which must be there.</summary>
    public static ElectricResistance Required(ReadingContext context, in Members<CircuitPartField> members)
    {
        members.Requires(context, CircuitPartField.Resistance, Sizes.Resistance);
        return Given(context, members);
    }

    static ElectricResistance Given(ReadingContext context, in Members<CircuitPartField> members)
    {
        var ohms = QuantityValue.Read(context, members[CircuitPartField.Resistance], Sizes.Resistance);
        return ElectricResistance.FromOhms(double.IsFinite(ohms) ? ohms : 1);
    }
}
