using System.Text.Json;
using FlowCalc.Api.Tests.Documentation;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Discharge;

/// <summary>Gases and liquefied gases through the whole service.</summary>
public sealed class ExpandingDischargeTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public static TheoryData<string, string> Bottles => new()
    {
        { "HFC-227ea", """ "fill": "7 kg", "chargePressure": "25 bar" """ },
        { "FK-5-1-12", """ "fill": "8 kg", "chargePressure": "42 bar" """ },
        { "HFC-125", """ "fill": "6 kg", "chargePressure": "25 bar" """ },
        { "HFC-236fa", """ "fill": "7 kg", "chargePressure": "16 bar" """ },
        { "HFC-23", """ "fill": "6.4 kg" """ },
        { "carbon-dioxide", """ "fill": "5.4 kg" """ },
        { "nitrogen", """ "chargePressure": "300 bar" """ },
        { "argon", """ "chargePressure": "200 bar" """ },
        { "IG-541", """ "chargePressure": "150 bar" """ },
        { "IG-55", """ "chargePressure": "200 bar" """ },
    };

    public void Dispose() => caller.Dispose();

    [Theory]
    [MemberData(nameof(Bottles))]
    public async Task Flow_and_discharge_of_every_agent_are_answered_as_the_contract_says(string agent, string bottle)
    {
        var flow = await caller.PostFlow(Document(agent, bottle)).Json(200);
        var discharge = await caller.PostDischarge(Document(agent, bottle)).Json(200);

        var contract = await Contract.Published();
        Assert.Empty(contract.Breaks(contract.SchemaOf("/v1/flow", "post", "200"), flow));
        Assert.Empty(contract.Breaks(contract.SchemaOf("/v1/discharge", "post", "200"), discharge));
        var boils = !agent.StartsWith("IG", StringComparison.Ordinal) && agent is not ("nitrogen" or "argon");
        Assert.Equal(boils ? JsonValueKind.Object : JsonValueKind.Null, flow.GetProperty("band").ValueKind);
        Assert.All(discharge.GetProperty("cases").EnumerateArray(), one =>
        {
            Assert.Equal(JsonValueKind.Null, one.GetProperty("failure").ValueKind);
            Assert.Equal(JsonValueKind.Object, one.GetProperty("band").ValueKind);
            Assert.Equal(JsonValueKind.Object, one.GetProperty("mostInTubes").ValueKind);
            Assert.Equal(JsonValueKind.Null, one.GetProperty("cushionExponent").ValueKind);
            Assert.Equal(agent == "carbon-dioxide" ? "triple-point" : "equalised", one.GetProperty("ended").GetString() is "flow-stopped" ? "equalised" : one.GetProperty("ended").GetString());
        });
        Assert.Contains(flow.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.StartsWith(agent == "carbon-dioxide" ? "Breathing: carbon" : "People:", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("us")]
    [InlineData("si")]
    public async Task Other_units_are_the_same_discharge(string units)
    {
        var document = Document("carbon-dioxide", """ "fill": "5.4 kg" """);
        var (metric, other) = (await caller.PostDischarge(document).Json(200), await caller.PostDischarge(document, "?units=" + units).Json(200));

        var (first, second) = (metric.GetProperty("cases")[0], other.GetProperty("cases")[0]);
        Assert.Equal(first.GetProperty("end").Value(), second.GetProperty("end").Value(), tolerance: 1e-9);
        var factor = units == "us" ? 14.503773773 : 1e5;
        Assert.Equal(first.GetProperty("startPressure").Value() * factor, second.GetProperty("startPressure").Value(), tolerance: 1e-6 * factor);
    }

    [Fact]
    public async Task The_same_document_has_the_same_answer_to_the_last_character()
    {
        var document = Document("FK-5-1-12", """ "fill": "8 kg", "chargePressure": "25 bar" """);

        Assert.Equal((await caller.PostDischarge(document).Json(200)).GetRawText(), (await caller.PostDischarge(document).Json(200)).GetRawText());
    }

    [Fact]
    public async Task Every_fault_of_a_bottle_that_does_not_fit_comes_at_once()
    {
        var fault = await caller.PostDischarge(Document("argon", """ "fill": "3 kg", "cushionGas": "nitrogen" """)).Fault(422);

        Assert.Equal(["/supply/bottle/chargePressure", "/supply/bottle/cushionGas", "/supply/bottle/fill"], fault.GetProperty("errors").EnumerateObject().Select(error => error.Name).Order());
    }

    static string Document(string agent, string bottle) => $$"""
        { "format": 1, "agent": "{{agent}}", "cases": { "temperatures": ["20 °C", "-10 °C"] },
          "supply": { "bottle": { "volume": "8 L", {{bottle}}, "wall": { "material": "steel", "thickness": "4 mm" }, "outlet": { "valveKv": "5 m3/h" } } },
          "zones": { "left": {}, "right": {} },
          "points": [ { "id": "S", "kind": "supply" }, { "id": "T", "kind": "tee", "fedThrough": "branch", "body": "smooth" },
            { "id": "L", "kind": "nozzle", "zone": "left", "kFactor": "6 L/min/bar^0.5" }, { "id": "R", "kind": "nozzle", "zone": "right", "kFactor": "5 L/min/bar^0.5" } ],
          "runs": [ { "from": "S", "to": "T", "bore": "12 mm", "length": "2 m" }, { "from": "T", "to": "L", "bore": "8 mm", "length": "0.8 m" }, { "from": "T", "to": "R", "bore": "8 mm", "length": "1.1 m" } ] }
        """;
}
