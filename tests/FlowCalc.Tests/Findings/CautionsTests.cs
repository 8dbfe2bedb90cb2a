using FlowCalc.Findings;

namespace FlowCalc.Tests.Findings;

public class CautionsTests
{
    [Fact]
    public void Every_result_warns_of_pressure_breathing_breakdown_and_live_circuits_and_claims_no_approval()
    {
        var cautions = Cautions.For(Judged.Read(Pair.Json));

        Assert.Contains(cautions, caution => caution.StartsWith("Pressure:", StringComparison.Ordinal));
        Assert.Contains(cautions, caution => caution.StartsWith("Breathing:", StringComparison.Ordinal));
        Assert.Contains(cautions, caution => caution.StartsWith("Breakdown:", StringComparison.Ordinal));
        Assert.Contains(cautions, caution => caution.StartsWith("Live circuits:", StringComparison.Ordinal));
        var law = Assert.Single(cautions, caution => caution.StartsWith("No approval:", StringComparison.Ordinal));
        Assert.All(["maker's instructions", "rules of the sport or class", "local codes", "licensed technician", "discharge test"],
            words => Assert.Contains(words, law, StringComparison.Ordinal));
    }

    [Fact]
    public void Cautions_follow_the_supply_the_agent_and_who_is_there()
    {
        var bottle = Pair.With("{ \"pressure\": \"8 bar\" }", """{ "bottle": { "volume": "4 L", "fill": "3 kg", "chargePressure": "14 bar" } }""");
        var own = Pair.With("\"agent\": \"water\"", """ "agent": { "density": "1100 kg/m3", "viscosity": "2 mPa·s" } """);
        var occupied = Pair.With("\"points\":", """ "zones": { "cab": { "occupied": true } }, "points": """);

        Assert.Contains("charged bottle", Cautions.For(Judged.Read(bottle))[0], StringComparison.Ordinal);
        Assert.DoesNotContain("charged bottle", Cautions.For(Judged.Read(Pair.Json))[0], StringComparison.Ordinal);
        Assert.Contains(Cautions.For(Judged.Read(own)), caution => caution.Contains("not known here", StringComparison.Ordinal));
        Assert.Contains(Cautions.For(Judged.Read(occupied)), caution => caution.StartsWith("People:", StringComparison.Ordinal));
        Assert.DoesNotContain(Cautions.For(Judged.Read(Pair.Json)), caution => caution.StartsWith("People:", StringComparison.Ordinal));
    }
}
