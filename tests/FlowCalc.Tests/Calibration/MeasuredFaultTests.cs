using System.Text.Json.Nodes;
using FlowCalc.Examples;
using FlowCalc.Layouts;
using FlowCalc.Tests.Flows;
using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Calibration;

/// <summary>A test that makes no sense: every fault with its place and what would be right.</summary>
public class MeasuredFaultTests
{
    static string With(string measured, string? agent = null, string? supply = null)
    {
        var json = JsonNode.Parse(ExampleCatalogue.Find("raid-pickup")!.Value.Span)!;
        foreach (var other in (string[])["mount", "circuit", "service", "cutting", "cases"]) json.AsObject().Remove(other);
        json["measured"] = JsonNode.Parse(measured);
        if (agent is not null) json["agent"] = JsonNode.Parse(agent);
        if (supply is not null) json["supply"] = JsonNode.Parse(supply);
        return json.ToJsonString();
    }

    [Theory]
    [InlineData("[]", "", "is an object with")]
    [InlineData("{}", "/supplyPressure", "missing")]
    [InlineData("""{ "supplyPressure": "8 bar" }""", "", "read no reading")]
    [InlineData("""{ "supplyPressure": "8 bar", "flow": {}, "flows": { "driver": "2 L/min" } }""", "/flow", "unknown field 'flow'")]
    [InlineData("""{ "supplyPressure": "8 bar", "collected": { "driver": "1 L" } }""", "/time", "missing")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min" }, "time": "20 s" }""", "/time", "nothing was collected")]
    [InlineData("""{ "supplyPressure": "8 bar", "time": "0 s", "collected": { "driver": "1 L" } }""", "/time", "0.1 to 86400 s")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": {} }""", "/flows", "read no nozzle")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": [] }""", "/flows", "one entry a name")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "drivr": "2 L/min" } }""", "/flows/drivr", "did you mean 'driver'")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "T-cab": "2 L/min" } }""", "/flows/T-cab", "is no nozzle")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min", "driver": "2 L/min" } }""", "/flows/driver", "have 'driver' already")]
    [InlineData("""{ "supplyPressure": "8 bar", "time": "10 s", "collected": { "driver": "1 L" }, "flows": { "driver": "2 L/min" } }""", "/flows/driver", "has a reading already")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L" } }""", "/flows/driver", "volume flow")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": 2 } }""", "/flows/driver", "volume flow")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "-2 L/min" } }""", "/flows/driver", "0 to 10 m3/s")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "0 L/min", "turbo": "0 kg/s" } }""", "/flows", "read nothing at every nozzle")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": { "reading": "2 L/min", "uncertainty": 0 } } }""", "/flows/driver/uncertainty", "0.0001 to 1")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": { "reading": "2 L/min", "uncertainty": "0 L/min" } } }""", "/flows/driver/uncertainty", "over 0")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": { "reading": "2 L/min", "uncertainty": "1 bar" } } }""", "/flows/driver/uncertainty", "")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": { "uncertainty": 0.1 } } }""", "/flows/driver/reading", "missing")]
    [InlineData("""{ "supplyPressure": "8 bar", "uncertainty": 2, "flows": { "driver": "2 L/min" } }""", "/uncertainty", "0.0001 to 1")]
    [InlineData("""{ "supplyPressure": "0.5 bara", "flows": { "driver": "2 L/min" } }""", "/supplyPressure", "over the ambient pressure")]
    [InlineData("""{ "supplyPressure": "8 bar", "pressures": {} }""", "/pressures", "read no point")]
    [InlineData("""{ "supplyPressure": "8 bar", "pressures": { "bottle": "8 bar" } }""", "/pressures/bottle", "is the supply")]
    [InlineData("""{ "supplyPressure": "8 bar", "pressures": { "T-far": "8 bar" } }""", "/pressures/T-far", "no point has the id")]
    [InlineData("""{ "supplyPressure": "8 bar", "pressures": { "T-cab": "8 L" } }""", "/pressures/T-cab", "")]
    [InlineData("""{ "supplyPressure": "8 bar", "agent": "nitrogen", "flows": { "driver": "2 L/min" } }""", "/agent", "no liquid")]
    [InlineData("""{ "supplyPressure": "8 bar", "temperature": "-5 °C", "flows": { "driver": "2 L/min" } }""", "/temperature", "freezes at")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min" }, "suspects": [] }""", "/suspects", "one or more")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min" }, "suspects": ["kink"] }""", "/suspects/0", "supply-pressure")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min" }, "suspects": ["bore", "bore"] }""", "/suspects/1", "repeated")]
    [InlineData("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min" }, "suspects": ["nozzles"] }""", "/suspects/0", "more unknowns than readings, 2")]
    [InlineData("""{ "dischargeTime": "16 s", "supplyPressure": "8 bar" }""", "/supplyPressure", "either dischargeTime")]
    [InlineData("""{ "dischargeTime": "16 s", "flows": { "driver": "2 L/min" } }""", "/flows", "either dischargeTime")]
    [InlineData("""{ "dischargeTime": "16 s", "suspects": ["run"] }""", "/suspects/0", "one unknown")]
    [InlineData("""{ "dischargeTime": "16 s", "suspects": ["nozzles"] }""", "/suspects/0", "more unknowns than readings")]
    [InlineData("""{ "dischargeTime": "16 s", "uncertainty": 0.01 }""", "/uncertainty", "either dischargeTime")]
    [InlineData("""{ "supplyPressure": "8 bar", "uncertainty": 0.01, "pressures": { "T-cab": "5 bar" } }""", "/uncertainty", "a pressure states its own")]
    [InlineData("""{ "dischargeTime": 16 }""", "/dischargeTime", "a bare number")]
    public void A_wrong_value_is_one_fault(string measured, string pointer, string words)
    {
        // A repeated name cannot be put into a tree of JSON.
        var json = measured.Contains("\"driver\": \"2 L/min\", \"driver\"", StringComparison.Ordinal) ? With("\"PLACE\"").Replace("\"PLACE\"", measured, StringComparison.Ordinal) : With(measured);

        var faults = Specimen.Read(json).Faults;

        if (measured == "{}") Assert.Equal(["/measured/supplyPressure", "/measured"], faults.Select(fault => fault.Pointer).OrderDescending(StringComparer.Ordinal));
        else
        {
            var fault = Assert.Single(faults);
            Assert.Equal("/measured" + pointer, fault.Pointer);
            Assert.Contains(words, fault.Message, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_time_needs_a_liquid_in_a_bottle()
    {
        var held = Specimen.Read(With("""{ "dischargeTime": "16 s" }""", supply: """{ "pressure": "8 bar" }""")).Faults;
        var gas = Specimen.Read(With("""{ "dischargeTime": "16 s" }""", agent: "\"nitrogen\"", supply: """{ "bottle": { "volume": "4 L", "chargePressure": "100 bar" } }""")).Faults;

        Assert.Contains("no bottle", Assert.Single(held).Message, StringComparison.Ordinal);
        Assert.Contains("no liquid", Assert.Single(gas).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_wrong_reading_is_told_at_once()
    {
        var faults = Specimen.Read(With("""{ "supplyPressure": 8, "agent": "argon", "flows": { "drivr": "2 L/min", "turbo": "1 L" }, "pressures": { "bottle": "8 bar" }, "suspects": ["bend"] }""")).Faults;

        Assert.Equal(["/measured/agent", "/measured/flows/drivr", "/measured/flows/turbo", "/measured/pressures/bottle", "/measured/supplyPressure", "/measured/suspects/0"], faults.Select(fault => fault.Pointer).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_whole_test_is_read_and_fits_the_schema()
    {
        var json = With("""
            { "note": "tank", "agent": { "density": "1020 kg/m3", "viscosity": "1.3 mPa·s" }, "temperature": "12 °C", "supplyPressure": "9 bar", "time": "20 s", "uncertainty": 0.05,
              "collected": { "driver": { "value": 0.8, "unit": "L" }, "navigator": { "reading": "0.9 kg", "uncertainty": "9 g", "note": "scale" } },
              "flows": { "turbo": { "reading": "2.4 L/min", "uncertainty": 0.1 } }, "pressures": { "T-cab": { "reading": "7 bar", "uncertainty": "0.1 bar" }, "exhaust": "5 bar" },
              "suspects": ["run", "bore"] }
            """);

        var layout = Documents.Read(json);

        Assert.True(BuiltSchema.Accepts(json));
        var measured = layout.Measured!;
        string Id(MeasuredReading reading) => layout.Points[reading.Point].Id;
        Assert.Equal(["driver", "navigator", "turbo", "T-cab", "exhaust"], measured.Readings.Select(Id));
        Assert.Equal(0.8e-3 * 1020 / 20, measured.Readings[0].Value, tolerance: 1e-12);
        Assert.Equal(0.05 * measured.Readings[0].Value, measured.Readings[0].Uncertainty, tolerance: 1e-12);
        Assert.Equal(0.9 / 20, measured.Readings[1].Value, tolerance: 1e-12);
        Assert.Equal(0.009 / 20, measured.Readings[1].Uncertainty, tolerance: 1e-12);
        Assert.Equal(2.4e-3 / 60 * 1020 * 0.1, measured.Readings[2].Uncertainty, tolerance: 1e-12);
        Assert.Equal(101_300 + 7e5, measured.Readings[3].Value, tolerance: 1e-6);
        Assert.Equal(1e4, measured.Readings[3].Uncertainty, tolerance: 1e-9);
        Assert.Equal(0.025 * 5e5, measured.Readings[4].Uncertainty, tolerance: 1e-6);
        Assert.Equal([CauseKind.Run, CauseKind.Bore], measured.Suspects);
        Assert.Equal(["/measured/pressures", "/measured/collected"], measured.Assumptions.Select(assumption => assumption.Pointer));
    }

    [Fact]
    public void No_flow_is_known_better_than_to_a_hundredth_of_their_mean()
    {
        var measured = Documents.Read(With("""{ "supplyPressure": "8 bar", "flows": { "driver": "2 L/min", "navigator": "0 L/min" } }""")).Measured!;

        Assert.Equal(0.01 * measured.Readings[0].Value / 2, measured.Readings[1].Uncertainty, tolerance: 1e-12);
    }
}
