using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Studies.Comparing;
using UnitsNet;

namespace FlowCalc.Api.Compare;

/// <summary>Writes one nozzle in each of the layouts compared.</summary>
internal static class ComparedNozzles
{
    public static ComparedNozzleAnswer Of(ComparisonResult result, ComparedNozzle nozzle, UnitWriter write)
    {
        var all = ImmutableArray.CreateBuilder<NozzleInAnswer>(result.Results.Length);
        for (var at = 0; at < result.Results.Length; at++)
            if (nozzle.Places[at] is { } place)
                all.Add(In(result.Results[at].Variant, place, at == 0 ? null : nozzle.Places[0], write));
        return new(nozzle.Id, all.DrainToImmutable());
    }

    static NozzleInAnswer In(Variant variant, NozzlePlace place, NozzlePlace? before, UnitWriter write) => new(
        variant.Name,
        write.Gauge(place.Flow.Pressure, variant.Layout.AmbientPressure),
        write.Of(place.Flow.MassFlow),
        UnitWriter.Plain(place.Flow.Share),
        UnitWriter.Plain(place.Flow.Deviation),
        place.Discharge is { } extremes ? Extremes(extremes, write) : null,
        before is null ? null : Difference(place, before, write));

    static NozzleExtremesAnswer Extremes(NozzleExtremes extremes, UnitWriter write) => new(
        write.Of(extremes.LeastMass), UnitWriter.Plain(extremes.WorstDeviation), write.Of(extremes.LatestArrival), write.Of(extremes.LatestTime95));

    static NozzleDifferenceAnswer Difference(NozzlePlace one, NozzlePlace before, UnitWriter write) => new(
        write.Of(one.Flow.Pressure - before.Flow.Pressure),
        Over(one.Flow.MassFlow.KilogramsPerSecond, before.Flow.MassFlow.KilogramsPerSecond),
        UnitWriter.Plain(one.Flow.Share - before.Flow.Share),
        Over(one.Discharge?.LeastMass.Kilograms, before.Discharge?.LeastMass.Kilograms),
        write.Of(Less(one.Discharge?.LatestArrival, before.Discharge?.LatestArrival)),
        write.Of(Less(one.Discharge?.LatestTime95, before.Discharge?.LatestTime95)));

    static double? Over(double? one, double? before) => one is { } value && before is > 0 and var divisor ? UnitWriter.Plain(value / divisor - 1) : null;

    static Duration? Less(Duration? one, Duration? before) => one is { } value && before is { } other ? value - other : null;
}
