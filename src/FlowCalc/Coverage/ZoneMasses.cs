using System.Collections.Immutable;
using FlowCalc.Discharge;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>What the nozzles of zones give, of a discharge or of a stated quantity.</summary>
sealed class ZoneMasses(Layout layout, DischargeResult? discharge, FlowResult? flow)
{
    // The rule of the trade: what counts is over when 95 % are out.
    const double Counted = 0.95;

    /// <summary>Agent that nozzles give together, in the least and the greatest case; null where neither a discharge nor a quantity tells.</summary>
    public MassSpan? Of(ImmutableArray<int> nozzles)
    {
        if (discharge is null) return OfQuantity(nozzles);
        MassSpan? span = null;
        foreach (var (one, at) in discharge.Cases.Select((one, at) => (one, at)))
        {
            if (one.Failure is not null) continue;
            var (least, most) = Of(one, nozzles);
            span = span is null ? new(least, at, most, at)
                : new(least < span.Least ? least : span.Least, least < span.Least ? at : span.LeastCase, most > span.Most ? most : span.Most, most > span.Most ? at : span.MostCase);
        }
        return span;
    }

    /// <summary>Mean mass flow of nozzles together while they give the first 95 %, in the case that gives least, kg/s; null where no case tells.</summary>
    public double? LeastFlow(ImmutableArray<int> nozzles)
    {
        double? least = null;
        foreach (var one in Answered())
        {
            double? sum = 0;
            foreach (var nozzle in one.Nozzles)
                if (nozzles.Contains(nozzle.Point)) sum += Mean(nozzle);
            if (sum is { } flows && !(flows >= least)) least = flows;
        }
        return least;
    }

    /// <summary>Volume flow of a nozzle; null of a gas or an agent that boils, and where nothing is known.</summary>
    public FlowSpan? FlowOf(int point)
    {
        if (layout.Agent is not Agents.LiquidAgent liquid) return null;
        if (discharge is null)
            return flow?.Nozzles.FirstOrDefault(one => one.Point == point) is { } steady ? new(steady.VolumeFlow, steady.VolumeFlow) : null;
        FlowSpan? span = null;
        foreach (var one in Answered())
        {
            if (Mean(one.Nozzles.First(nozzle => nozzle.Point == point)) is not { } mean) continue;
            var volume = VolumeFlow.FromCubicMetersPerSecond(mean / liquid.Density(one.Temperature.Kelvins));
            span = span is { } known ? new(volume < known.Least ? volume : known.Least, volume > known.Most ? volume : known.Most) : new(volume, volume);
        }
        return span;
    }

    IEnumerable<DischargeCase> Answered() => discharge?.Cases.Where(one => one.Failure is null) ?? [];

    // A nozzle to which nothing comes gives nothing, which is less than any flow.
    static double? Mean(NozzleDischarge nozzle) => nozzle.Mass.Kilograms == 0 ? 0
        : nozzle is { Arrival: { } arrival, Time95: { } end } && end > arrival ? Counted * nozzle.Mass.Kilograms / (end - arrival).Seconds : null;

    static (Mass Least, Mass Most) Of(DischargeCase one, ImmutableArray<int> nozzles)
    {
        var total = one.Nozzles.Sum(nozzle => nozzle.Mass.Kilograms);
        var (least, most) = (0.0, 0.0);
        for (var i = 0; i < one.Nozzles.Length; i++)
        {
            if (!nozzles.Contains(one.Nozzles[i].Point)) continue;
            var mass = one.Nozzles[i].Mass.Kilograms;
            var band = one.Band?.Shares is { IsDefaultOrEmpty: false } shares ? shares[i] : (ShareBand?)null;
            least += band is null ? mass : Math.Min(mass, band.Value.Low * total);
            most += band is null ? mass : Math.Max(mass, band.Value.High * total);
        }
        return (Mass.FromKilograms(least), Mass.FromKilograms(Math.Min(most, total)));
    }

    MassSpan? OfQuantity(ImmutableArray<int> nozzles)
    {
        if (flow is not { Report.Converged: true } || layout.Requirement is not { Quantity: { } quantity }) return null;
        var mass = Mass.FromKilograms(quantity.Kilograms * flow.Nozzles.Where(one => nozzles.Contains(one.Point)).Sum(one => one.Share));
        return new(mass, null, mass, null);
    }
}
