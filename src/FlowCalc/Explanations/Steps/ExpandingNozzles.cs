using FlowCalc.Agents;
using FlowCalc.Flows;

namespace FlowCalc.Explanations;

/// <summary>Nozzles of a gas or of an agent that boils.</summary>
/// <param name="log">Where to.</param>
/// <param name="solved">The solution.</param>
/// <param name="ambient">Absolute pressure of the surroundings, Pa.</param>
internal sealed class ExpandingNozzles(StepLog log, SolvedExpanding solved, double ambient)
{
    // Parts of the surroundings' pressure: nearer to it the work of the expansion is lost in the digits of enthalpies.
    const double NearRest = 1e-5;

    readonly IStream stream = solved.Stream();

    /// <summary>Writes a nozzle down.</summary>
    /// <param name="at">Logarithm of the absolute total pressure at it, Pa.</param>
    /// <param name="area">Cd·A, m².</param>
    /// <param name="isClosed">Whether nothing passes.</param>
    public void Add(double at, double area, bool isClosed)
    {
        var pressure = Math.Exp(at);
        var flux = solved.Table.Nozzle(at).Flux;
        if (isClosed || !(flux > 0))
        {
            log.Add(GasNozzleEquations.Closed, "flow", 0, pressure);
            return;
        }
        log.Add(GasNozzleEquations.Flow, "flow", area * flux, area, flux);
        if (pressure < ambient * (1 + NearRest)) return;
        var way = stream.Nozzle(pressure);
        var part = NozzleFlux.PartThatBoils(way, pressure, ambient, solved.Model);
        var (exact, throat) = NozzleFlux.Of(way, pressure, ambient, solved.Model);
        var (volume, work) = way.Equilibrium(throat);
        if (part == 1)
        {
            log.Add(GasNozzleEquations.Expansion, "mass flux", exact, throat, volume, work);
            return;
        }
        var (frozenVolume, frozenWork) = way.Frozen(throat);
        log.Add(GasNozzleEquations.DelayedExpansion, "mass flux", exact, throat, part, volume, work, frozenVolume, frozenWork);
    }
}
