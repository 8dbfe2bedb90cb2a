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
            var area = Math.PI / 4 * bore * bore;
            constant += TubeInlet.SquareCut / (2 * area * area);
        }
        constant += FlowCoefficient(outlet.ValveKv) + FlowCoefficient(outlet.Regulator?.Kv);
        if (outlet.Restrictor is { } restrictor)
        {
            var area = Orifice.EffectiveArea(restrictor.Diameter.Meters, restrictor.DischargeCoefficient);
            constant += 1 / (2 * area * area);
        }
        return new(bore, length, roughness, 0, constant, bottle.Count);
    }

    // Kv refers to 1000 kg/m³: Δp·ρ = m² / (1000 Kv²).
    static double FlowCoefficient(double? kv) => kv is { } value ? 1 / (1000 * value * value) : 0;
}
