using FlowCalc.Bottles;
using FlowCalc.Layouts;

namespace FlowCalc.Discharge;

/// <summary>Masses whose times are asked of every case.</summary>
/// <param name="Masses">Masses out of all nozzles, kg, rising.</param>
/// <param name="Usual">Index of the usual part of the contents.</param>
/// <param name="Required">Index of the requirement's; negative for none.</param>
internal readonly record struct AskedMasses(double[] Masses, int Usual, int Required)
{
    /// <summary>The masses of a bottle and a requirement.</summary>
    /// <param name="bottle">The bottle.</param>
    /// <param name="requirement">What is required; null for nothing.</param>
    public static AskedMasses Of(Bottle bottle, Requirement? requirement)
    {
        var contents = bottle.Fill.Kilograms * bottle.Count;
        var usual = LayoutDischarge.UsualPart * contents;
        if (requirement is null) return new([usual], 0, -1);
        var required = requirement.Part * (requirement.OfContents ? contents : requirement.Quantity!.Value.Kilograms);
        if (required == usual) return new([usual], 0, 0);
        return required < usual ? new([required, usual], 1, 0) : new([usual, required], 0, 1);
    }
}
