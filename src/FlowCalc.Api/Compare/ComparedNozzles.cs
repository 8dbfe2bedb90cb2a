using System.Collections.Immutable;
using FlowCalc.Api.Answers;
using FlowCalc.Studies.Comparing;

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
        before is null ? null : Difference(NozzleDifference.Of(place, before), write));

    static NozzleExtremesAnswer Extremes(NozzleExtremes extremes, UnitWriter write) => new(
        write.Of(extremes.LeastMass), UnitWriter.Plain(extremes.WorstDeviation), write.Of(extremes.LatestArrival), write.Of(extremes.LatestTime95));

    static NozzleDifferenceAnswer Difference(NozzleDifference one, UnitWriter write) => new(
        write.Of(one.Pressure), UnitWriter.Plain(one.MassFlow), UnitWriter.Plain(one.Share), UnitWriter.Plain(one.LeastMass), write.Of(one.LatestArrival), write.Of(one.LatestTime95));
}
