using FlowCalc.Quantities;
using FlowCalc.Upkeep;

namespace FlowCalc.Findings.Upkeep;

/// <summary>What weight and gauge say of the contents.</summary>
static class Contents
{
    const string Place = "bottle";

    public static void Find(JudgedUpkeep judged, FindingList findings)
    {
        Weight(judged, findings);
        var code = UpkeepCalculation.LossLimit(judged.Layout.Agent.Kind);
        if (code is null && judged.Layout.Supply is Layouts.BottleSupply)
            findings.Add(new Finding(FindingCodes.GaugeNoFill, Severity.Note, [Place], "The gauge of this agent shows its temperature and not its fill: only weighing shows that.", null, null, "physics", null), -1);
        else if (code is not null) Lost(judged, code, findings);
        Green(judged, findings);
    }

    static void Weight(JudgedUpkeep judged, FindingList findings)
    {
        if (judged.Result.Weight is not { } weight) return;
        var limit = judged.Limit(FindingCodes.AgentLost);
        var (severity, step) = Grading.Of(limit, weight.Lost);
        if (severity == Severity.Pass) return;
        var doubt = weight.Doubt is { } part ? $", give or take {Wording.Percent(part)} for the step of the scale{(weight.Lost - part <= step ? ", which leaves it open" : "")}" : "";
        findings.Add(new Finding(FindingCodes.AgentLost, severity, [Place],
            $"The bottle weighs {judged.Text(weight.Gross.Kilograms, QuantityKind.Mass)} and {judged.Text(weight.Stamped.Kilograms, QuantityKind.Mass)} when full: {Wording.Percent(weight.Lost, step)} of its agent is gone, limit {Wording.Percent(step)}{doubt}.",
            new Measure(weight.Lost, null), new Measure(step, null), limit.Source, null), -1);
    }

    static void Lost(JudgedUpkeep judged, string code, FindingList findings)
    {
        if (judged.Result.Gauge is not { Lost: { } lost } gauge) return;
        var limit = judged.Limit(code);
        var (severity, step) = Grading.Of(limit, lost);
        if (severity == Severity.Pass) return;
        findings.Add(new Finding(code, severity, [Place],
            $"The gauge read {judged.Gauge(gauge.Reading)} at {judged.Celsius(gauge.Expected.Temperature)}, where a sound bottle reads {judged.Gauge(gauge.Expected.Pressure!.Value)}: {Wording.Percent(lost, step)} less, limit {Wording.Percent(step)}.",
            new Measure(lost, null), new Measure(step, null), limit.Source, null), -1);
    }

    static void Green(JudgedUpkeep judged, FindingList findings)
    {
        if (judged.Book.Gauge is not { Green: { } green } gauge) return;
        var range = $"{judged.Gauge(green.Least)} to {judged.Gauge(green.Most)}";
        if (gauge.Reading is { } reading && (reading < green.Least || reading > green.Most))
            findings.Add(new Finding(FindingCodes.GaugeOffGreen, Severity.Warn, [Place], $"The gauge read {judged.Gauge(reading)}, outside its green of {range}.", null, null, "the part's mark", null), -1);
        if (judged.Result.Expected is not { Pressure: { } expected, Temperature: var temperature }) return;
        var lowest = judged.Result.Lowest ?? expected;
        var sentence = expected < green.Least || expected > green.Most
            ? $"At {judged.Celsius(temperature)} a sound bottle reads {judged.Gauge(expected)}, outside the green of {range}"
            : lowest > green.Least ? $"At {judged.Celsius(temperature)} a sound bottle reads {judged.Gauge(expected)}; the green of {range} goes on below {judged.Gauge(lowest)}, from where on it has lost too much" : null;
        if (sentence is not null) findings.Add(new Finding(FindingCodes.GaugeMisleads, Severity.Note, [Place], $"{sentence}: judge the reading by the temperature.", null, null, "physics", null), -1);
    }
}
