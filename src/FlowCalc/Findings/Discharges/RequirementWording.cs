using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Findings.Discharges;

/// <summary>The sentences about the requirement.</summary>
sealed class RequirementWording(JudgedDischarge judged, Requirement rule)
{
    /// <summary>What the required part is a part of, kg.</summary>
    public double Whole { get; } = rule.OfContents ? judged.Contents : rule.Quantity!.Value.Kilograms;

    /// <summary>Ends a sentence where the rule may not be the user's.</summary>
    public string Whose => judged.Discharge.IsRequirementStated ? "" : "; the rule is the application's default, which may not be yours";

    string WholeWords => rule.OfContents ? "the contents" : $"the {Mass(Whole)} asked for";

    string Asked => $"{Wording.Percent(rule.Part)} of {WholeWords}";

    public string Slow(Hit hit) => $"{Asked} are out of the nozzles only after {Time(hit)}, latest {Time(hit.Bound)}";

    public string Fast(Hit hit) => $"{Asked} are out of the nozzles already after {Time(hit)}, earliest {Time(hit.Bound)}";

    public string Never(DischargeCase one)
    {
        var delivered = JudgedDischarge.Delivered(one);
        var latest = rule.Latest is { } bound ? $" within {Time(bound.Seconds)}" : "";
        return $"{Asked}, asked for{latest}, never come out of the nozzles: only {Mass(delivered)} do, {Wording.Percent(delivered / Whole, rule.Part)}";
    }

    public string While(DischargeCase warmer) => $", while at {judged.TemperatureOf(warmer)} it takes {Time(warmer.RequiredTime!.Value.Seconds)}";

    public string Marginal(DischargeCase one, Hit hit, string end)
    {
        var band = one.Band!.RequiredTime!.Value;
        string End(UnitsNet.Duration? time) => time is { } reached ? Wording.Of(reached.Seconds, hit.Bound, QuantityKind.Time, judged.Units) : "never";
        return $"{Asked} are out of the nozzles after {Time(hit)}, {end} {Time(hit.Bound)}: marginal, as what the model leaves open ({string.Join("; ", one.Band.From)}) makes it {End(band.Low)} to {End(band.High)}";
    }

    string Time(Hit hit) => Wording.Of(hit.Measured, hit.Bound, QuantityKind.Time, judged.Units);

    string Time(double seconds) => Wording.Of(seconds, QuantityKind.Time, judged.Units);

    string Mass(double kilograms) => Wording.Of(kilograms, QuantityKind.Mass, judged.Units);
}
