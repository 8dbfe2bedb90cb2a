using FlowCalc.Bottles;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>A layout's line as every case of its discharge takes it: compiled once.</summary>
/// <param name="Compiled">The line, its run 0 from the dip tube's inlet to the supply point.</param>
/// <param name="Volume">Volume of each run, m³, in solve order; of all bottles' dip tubes together.</param>
/// <param name="Area">Area of each run's bore, m², in solve order; of all bottles' outlets together.</param>
/// <param name="Length">Length of each run, m, in solve order.</param>
/// <param name="ValveResistance">Resistance of the valve at the area to which it opens, of all bottles together, 1/m⁴.</param>
internal sealed record CompiledLine(LayoutNetwork Compiled, double[] Volume, double[] Area, double[] Length, double ValveResistance)
{
    // A run of less than this part of the bottle's volume is passed at once and holds nothing.
    const double Negligible = 1e-8;

    /// <summary>Compiles the line of a layout.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="bottle">Its bottle.</param>
    public static CompiledLine Of(Layout layout, Bottle bottle)
    {
        var outlet = OutletGeometry.Of(bottle, SupplyDrive.FirstBore(layout));
        var compiled = layout.Compile(outlet);
        var count = compiled.Network.Count;
        double[] area = compiled.Areas(layout, outlet), volume = new double[count], length = new double[count];
        for (var j = 0; j < count; j++)
        {
            length[j] = j == 0 ? outlet.StraightLength : layout.Runs[compiled.Runs[j]].Length.Meters;
            volume[j] = area[j] * length[j];
            if (volume[j] < Negligible * bottle.Volume.CubicMeters) volume[j] = 0;
        }
        // A valve of unknown size opens to the bore that it stands in.
        var valve = bottle.Outlet?.ValveKv is { } kv ? Resistance.OfFlowCoefficient(kv) : Resistance.PerCoefficient(outlet.Bore);
        return new(compiled, volume, area, length, valve / ((double)bottle.Count * bottle.Count));
    }

    /// <summary>The line with the rises that an attitude gives it.</summary>
    /// <param name="layout">The layout.</param>
    /// <param name="gravity">Effective gravity in the layout's axes, in g.</param>
    /// <param name="outletRise">Height of the outlet over the dip tube's inlet times gravity in g, m.</param>
    public Network In(Layout layout, Direction gravity, double outletRise)
    {
        var rise = new double[Compiled.Network.Count];
        rise[0] = outletRise;
        for (var j = 1; j < rise.Length; j++) rise[j] = AttitudeRise.Of(layout, layout.Runs[Compiled.Runs[j]], gravity);
        return Compiled.Network.WithRise(rise);
    }

    /// <summary>The network's nozzles in the order of a document, which is that of its points.</summary>
    public int[] NozzleOrder()
    {
        var nozzles = Compiled.Network.Nozzles;
        var points = Array.ConvertAll(nozzles, run => Compiled.Points[run]);
        var order = new int[nozzles.Length];
        for (var i = 0; i < order.Length; i++) order[i] = i;
        Array.Sort(points, order);
        return order;
    }
}
