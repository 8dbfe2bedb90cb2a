namespace FlowCalc.Quantities;

/// <summary>The kinds of quantity in words, for messages.</summary>
static class KindWords
{
    public static string Of(QuantityKind kind) => kind switch
    {
        QuantityKind.VolumeFlow => "volume flow",
        QuantityKind.MassFlow => "mass flow",
        QuantityKind.KFactor => "K-factor",
        QuantityKind.WettingRate => "wetting rate",
        QuantityKind.FlowCoefficient => "flow coefficient",
        _ => kind.ToString().ToLowerInvariant(),
    };
}
