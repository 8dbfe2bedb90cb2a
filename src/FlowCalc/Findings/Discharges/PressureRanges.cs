using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Nozzles that leave their own range of pressures while they give liquid.</summary>
static class PressureRanges
{
    const string Statement = "the nozzle's statement";

    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        CaseHits below = new(judged), above = new(judged);
        foreach (var (at, one) in judged.Answered)
            foreach (var given in one.Nozzles)
            {
                judged.Pass(given.Point);
                if (judged.Layout.Points[given.Point] is not Nozzle { PressureRange: { } range } nozzle) continue;
                if (given.LeastPressure?.Pascals is { } least) Add(below, nozzle.Id, range.Least.Pascals, least, range.Least.Pascals - least);
                if (given.GreatestPressure?.Pascals is { } greatest) Add(above, nozzle.Id, range.Most.Pascals, greatest, greatest - range.Most.Pascals);

                void Add(CaseHits hits, string id, double bound, double pressure, double excess)
                {
                    if (excess > 1e-9 * bound) hits.Add(at, new Hit(given.Point, id, Severity.Warn, excess, pressure - judged.Ambient, bound - judged.Ambient));
                }
            }
        below.AddTo(findings, FindingCodes.NozzleBelowRange, Statement, QuantityKind.Pressure, "nozzle",
            (_, hit) => $"{Wording.Id(hit.Id)} comes down to {Pressure(judged, hit)} while the bottle gives liquid, below the least of its range, {Wording.Of(hit.Bound, QuantityKind.Pressure, judged.Units)}");
        above.AddTo(findings, FindingCodes.NozzleAboveRange, Statement, QuantityKind.Pressure, "nozzle",
            (_, hit) => $"{Wording.Id(hit.Id)} comes up to {Pressure(judged, hit)}, above the most of its range, {Wording.Of(hit.Bound, QuantityKind.Pressure, judged.Units)}");
    }

    static string Pressure(JudgedDischarge judged, Hit hit) => Wording.Of(hit.Measured, hit.Bound, QuantityKind.Pressure, judged.Units);
}
