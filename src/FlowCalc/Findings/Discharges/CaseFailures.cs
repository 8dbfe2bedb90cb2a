using FlowCalc.Agents;
using FlowCalc.Discharge;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>Cases that have no discharge, each kind of reason for itself; a bottle full of liquid is told by <see cref="LiquidParts"/>.</summary>
static class CaseFailures
{
    const string Data = "the agent's data";
    const string Physics = "physics";

    public static void Find(JudgedDischarge judged, FindingList findings)
    {
        var agent = judged.Layout.Agent;
        var units = judged.Units;
        string Temperature(double kelvins) => Wording.Of(kelvins, QuantityKind.Temperature, units);
        string Absolute(double pascals) => Wording.Of(pascals, QuantityKind.Pressure, units);

        Add(judged, findings, DischargeFailureKind.BelowFreezing, FindingCodes.BelowFreezing, Data, QuantityKind.Temperature,
            one => (one.Temperature.Kelvins, agent.FreezingPoint ?? double.NaN, -one.Temperature.Kelvins),
            (_, hit) => $"the agent is below its freezing point{(double.IsNaN(hit.Bound) ? "" : $" of {Temperature(hit.Bound)}")}: it is ice, or turning to ice, and nothing can be told of how it comes out");

        Add(judged, findings, DischargeFailureKind.OutsideData, FindingCodes.OutsideAgentData, Data, QuantityKind.Temperature,
            one => agent.Covers(one.Temperature.Kelvins) ? (one.Temperature.Kelvins, double.NaN, 0) : (one.Temperature.Kelvins, one.Temperature.Kelvins < agent.LowestTemperature ? agent.LowestTemperature : agent.HighestTemperature,
                Math.Max(agent.LowestTemperature - one.Temperature.Kelvins, one.Temperature.Kelvins - agent.HighestTemperature)),
            (one, hit) => double.IsNaN(hit.Bound) ? $"the case has no answer: {one.Failure!.Message.TrimEnd('.')}" : $"there are no data of the agent, which run from {Temperature(agent.LowestTemperature)} to {Temperature(agent.HighestTemperature)}: nothing is extrapolated and the case has no answer");

        Add(judged, findings, DischargeFailureKind.Boiling, FindingCodes.BelowVapourPressure, Data, QuantityKind.Pressure,
            one => agent is LiquidAgent liquid && agent.Covers(one.Temperature.Kelvins) ? (0, liquid.VapourPressure(one.Temperature.Kelvins) - judged.Ambient, liquid.VapourPressure(one.Temperature.Kelvins)) : (double.NaN, double.NaN, 0),
            (_, hit) => double.IsNaN(hit.Bound)
                ? "the liquid boils at the surroundings' pressure, and the case has no answer"
                : $"the liquid boils as it comes out: its vapour pressure is {Absolute(hit.Bound + judged.Ambient)} absolute and the surroundings' {Absolute(judged.Ambient)}, for which there is no answer with this agent");

        var burst = judged.Bottle.Outlet?.BurstPressure?.Pascals;
        Add(judged, findings, DischargeFailureKind.NoPressure, FindingCodes.NoDrivingPressure, Physics, QuantityKind.Pressure,
            one => one.StartPressure is { } start
                ? (start.Pascals - judged.Ambient, (start.Pascals < burst ? burst.Value : judged.Ambient) - judged.Ambient, -start.Pascals)
                : (double.NaN, double.NaN, 0),
            (_, hit) => hit switch
            {
                { Measured: double.NaN } => "the bottle has no pressure that drives the agent out",
                { Bound: > 0 } => $"the bottle holds {Absolute(hit.Measured)}, below the {Absolute(hit.Bound)} that burst the disc in its outlet: nothing comes out",
                _ => $"the bottle holds {Absolute(hit.Measured)} over the surroundings: nothing drives the agent out",
            });

        Add(judged, findings, DischargeFailureKind.NotSolved, FindingCodes.DischargeNotSolved, "the engine", null,
            _ => (double.NaN, double.NaN, 0), (one, _) => $"the discharge could not be followed to its end, and the case has no answer: {one.Failure!.Message.TrimEnd('.')}");
    }

    static void Add(
        JudgedDischarge judged, FindingList findings, DischargeFailureKind kind, string code, string source, QuantityKind? measured,
        Func<DischargeCase, (double Measured, double Bound, double Badness)> values, Func<DischargeCase, Hit, string> sentence)
    {
        var hits = new CaseHits(judged, isOfTemperature: kind != DischargeFailureKind.NotSolved);
        for (var at = 0; at < judged.Discharge.Cases.Length; at++)
        {
            judged.Pass(at);
            var one = judged.Discharge.Cases[at];
            if (one.Failure?.Kind != kind) continue;
            var (value, bound, badness) = values(one);
            hits.Add(at, new Hit(-1, judged.SupplyId, Severity.Fail, badness, value, bound));
        }
        hits.AddTo(findings, code, source, measured, _ => [judged.SupplyId], sentence);
    }
}
