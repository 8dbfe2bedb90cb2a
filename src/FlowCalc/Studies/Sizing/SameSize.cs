using FlowCalc.Layouts;

namespace FlowCalc.Studies.Sizing;

/// <summary>Whether what the stock has is what is there already.</summary>
internal static class SameSize
{
    /// <summary>The same tube: by its name, or without one by bore and roughness.</summary>
    public static bool Of(Tube one, Tube other) =>
        one.Name == other.Name && one.Bore.Meters == other.Bore.Meters && one.Roughness.Meters == other.Roughness.Meters;

    /// <summary>The same nozzle: by its type, or without one by its holes or its K-factor.</summary>
    public static bool Of(Nozzle one, Nozzle other) => one.Type == other.Type && one.KFactor == other.KFactor && one.Orifice == other.Orifice;
}
