using System.Text;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Flow;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Tests.Flow;

/// <summary>Whatever the engine may do wrong one day, no number that is not finite leaves the service.</summary>
public sealed class FiniteAnswerTests
{
    static readonly Layout Small = LayoutReader.Read(Encoding.UTF8.GetBytes(Documents.Small)).Layout!;
    static readonly FlowResult Right = SteadyFlow.Solve(Small, default);
    static readonly FlowJudgement Judgement = FlowFindings.Judge(Small, Right, UnitSystem.Metric, default);

    public static TheoryData<string> Places => ["share", "deviation", "zone", "reynolds", "residual", "measured", "limit"];

    [Fact]
    public void Right_flow_has_an_answer() => Assert.Equal(4, FlowAnswers.Of(Small, Right, Judgement, UnitWriter.Of(UnitSystem.Metric)).Points.Length);

    [Theory]
    [MemberData(nameof(Places))]
    public void Flow_with_a_number_that_is_not_finite_has_no_answer(string place)
    {
        var (flow, judgement) = Spoilt(place);

        foreach (var system in Enum.GetValues<UnitSystem>())
            Assert.Throws<NotFiniteException>(() => FlowAnswers.Of(Small, flow, judgement, UnitWriter.Of(system)));
    }

    static (FlowResult Flow, FlowJudgement Judgement) Spoilt(string place)
    {
        var (nozzle, run) = (Right.Nozzles[0], Right.Runs[0]);
        // The quantities of UnitsNet refuse what is not finite themselves; what is left are the plain numbers.
        return place switch
        {
            "share" => (Right with { Nozzles = Right.Nozzles.SetItem(0, nozzle with { Share = double.NaN }) }, Judgement),
            "deviation" => (Right with { Nozzles = Right.Nozzles.SetItem(0, nozzle with { WantedShare = 5e-324 }) }, Judgement),
            "zone" => (Right with { Zones = [new("cab", double.PositiveInfinity, 0.5)] }, Judgement),
            "reynolds" => (Right with { Runs = Right.Runs.SetItem(0, run with { Reynolds = double.PositiveInfinity }) }, Judgement),
            "residual" => (Right with { Report = Right.Report with { MassResidual = double.NaN } }, Judgement),
            "measured" => (Right, Judgement with { Findings = [new("starved-nozzle", Severity.Warn, ["left"], "…", new Measure(double.NaN, QuantityKind.Pressure), null, "…", null)] }),
            "limit" => (Right, Judgement with { Limits = [new("starved-nozzle", null, new Measure(double.NegativeInfinity, null), null, null, "…")] }),
            _ => throw new ArgumentOutOfRangeException(nameof(place)),
        };
    }
}
