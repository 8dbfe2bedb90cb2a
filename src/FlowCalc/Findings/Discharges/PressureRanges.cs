using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Nozzles that leave their own range of pressures while they give liquid.</summary>
static class PressureRanges
{
    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        CaseHits below = new(judged), above = new(judged);
        foreach (var (at, one) in judged.Answered)
            foreach (var given in one.Nozzles)
            {
                judged.Pass(given.Point);
                if (given.LeastPressure is { } least && NozzlePressures.Outside(judged, given.Point, least.Pascals, below: true) is { } low) below.Add(at, low);
                if (given.GreatestPressure is { } greatest && NozzlePressures.Outside(judged, given.Point, greatest.Pascals, below: false) is { } high) above.Add(at, high);
            }
        below.AddTo(findings, FindingCodes.NozzleBelowRange, NozzlePressures.Statement, QuantityKind.Pressure, "nozzle",
            (_, hit) => $"{Wording.Id(hit.Id)} comes down to {Pressure(judged, hit)} while the bottle gives liquid, below the least of its range, {Wording.Of(hit.Bound, QuantityKind.Pressure, judged.Units)}");
        above.AddTo(findings, FindingCodes.NozzleAboveRange, NozzlePressures.Statement, QuantityKind.Pressure, "nozzle",
            (_, hit) => $"{Wording.Id(hit.Id)} comes up to {Pressure(judged, hit)}, above the most of its range, {Wording.Of(hit.Bound, QuantityKind.Pressure, judged.Units)}");
    }

    static string Pressure(JudgedDischarge judged, Hit hit) => Wording.Of(hit.Measured, hit.Bound, QuantityKind.Pressure, judged.Units);
}
