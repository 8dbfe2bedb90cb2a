using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Bottles;

/// <summary>The bottle's outlet as the first run of the network.</summary>
internal static class OutletGeometry
{
    /// <summary>An outlet that loses nothing.</summary>
    /// <param name="bore">Any bore, m; it only gives the flow a Reynolds number.</param>
    public static RunGeometry Free(double bore) => new(bore, 0, 0, 0, 0);

    /// <summary>Inlet and friction of the dip tube, the valve, an open regulator and the restrictor, one after the other.</summary>
    /// <param name="bottle">The bottle; its count of equal bottles shares the flow.</param>
    /// <param name="firstBore">Bore of the first tube, m, where there is no dip tube.</param>
    /// <remarks>A restrictor counts with all of its orifice's pressure drop: nothing is recovered behind it.</remarks>
    public static RunGeometry Of(Bottle bottle, double firstBore)
    {
        if (bottle.Outlet is not { } outlet) return Free(firstBore) with { Parallel = bottle.Count };
        double constant = 0, length = 0, roughness = 0;
        var bore = firstBore;
        if (outlet.DipTube is { } dip)
        {
            (bore, length) = (dip.Bore.Meters, dip.Length.Meters);
            roughness = dip.Roughness.Meters / bore;
            constant += TubeInlet.SquareCut * Resistance.PerCoefficient(bore);
        }
        if (outlet.ValveKv is { } valve) constant += Resistance.OfFlowCoefficient(valve);
        if (outlet.Regulator?.Kv is { } regulator) constant += Resistance.OfFlowCoefficient(regulator);
        if (outlet.Restrictor is { } restrictor)
            constant += Resistance.OfArea(Orifice.EffectiveArea(restrictor.Diameter.Meters, restrictor.DischargeCoefficient));
        return new(bore, length, roughness, 0, constant, bottle.Count);
    }
}
