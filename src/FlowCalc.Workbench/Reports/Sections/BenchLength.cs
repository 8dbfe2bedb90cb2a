using System.Globalization;
using FlowCalc.Workbench.Figures;
using UnitsNet;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>Lengths as the bench measures them: in one unit throughout, to a tenth of a millimetre, since three digits do not cut a tube of two metres.</summary>
/// <param name="System">The system of units.</param>
sealed record BenchLength(Quantities.UnitSystem System)
{
    /// <summary>The unit.</summary>
    public string Unit => System switch { Quantities.UnitSystem.Metric => "mm", Quantities.UnitSystem.Us => "in", _ => "m" };

    /// <summary>A length without its unit; a dash where there is none.</summary>
    public string Of(Length? length) => length is not { } known ? Shown.None : (System switch
    {
        Quantities.UnitSystem.Metric => known.Millimeters.ToString("0.#", CultureInfo.InvariantCulture),
        Quantities.UnitSystem.Us => known.Inches.ToString("0.###", CultureInfo.InvariantCulture),
        _ => known.Meters.ToString("0.####", CultureInfo.InvariantCulture),
    }).Replace('-', '−');
}
