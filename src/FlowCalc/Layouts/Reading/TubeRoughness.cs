using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads the roughness of a tube's wall, with its default.</summary>
static class TubeRoughness
{
    public const string UsualWords = "1.5 µm";
    public const string UsualSource = "drawn tube (Moody, Trans. ASME 66 (1944) 671, from memory)";

    /// <summary>Most roughness as a part of the bore: where the data of friction end.</summary>
    public const double MostOfBore = 0.05;

    const double Usual = 1.5e-6;

    /// <summary>Whether a tube's roughness is too much for a fitting in it that is tighter than the tube.</summary>
    public static bool IsTooMuchFor(Fitting fitting, Tube tube) =>
        fitting.Bore is { } bore && bore < tube.Bore && tube.Roughness.Meters > MostOfBore * bore.Meters;

    /// <summary>Height of the roughness, m; NaN where it is wrong or the bore is not known.</summary>
    public static double Read(ReadingContext context, JsonValue owner, JsonValue element, double bore)
    {
        var isGiven = element.ValueKind is not JsonValueKind.Undefined;
        var roughness = isGiven ? QuantityValue.Read(context, element, Sizes.Roughness) : Usual;
        if (!(roughness > MostOfBore * bore)) return roughness + 0 * bore;
        if (isGiven) QuantityValue.Outside(context, element, Sizes.Roughness);
        else context.Faults.Add(owner, "roughness", $"missing: {UsualWords}, taken where none is given, is over 5 % of this bore; give {Sizes.Roughness.What}, {Sizes.Roughness.Words}");
        return double.NaN;
    }
}
