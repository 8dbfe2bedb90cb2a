using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Circuits;

public sealed class CircuitCallTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Demo_fires_by_both_pushes_when_armed_and_in_no_other_row()
    {
        var answer = await caller.PostCircuit(Documents.Demo).Json(200);

        Assert.Equal("warn", answer.GetProperty("verdict").GetString());
        var states = answer.GetProperty("states").EnumerateArray().ToArray();
        Assert.Equal(9, states.Length);
        Assert.All(states, state => Assert.Equal(state.GetProperty("meantToFire").GetBoolean() ? "fires" : "rests", state.GetProperty("actuators")[0].GetProperty("does").GetString()));
        Assert.All(states, state => Assert.Equal(state.GetProperty("state").GetString() == "test" ? "lit" : "dark", state.GetProperty("lamps")[0].GetProperty("is").GetString()));
        Assert.Empty(answer.GetProperty("assumptions").EnumerateArray());
        Assert.StartsWith("Firing:", answer.GetProperty("cautions")[0].GetString(), StringComparison.Ordinal);
        Assert.Contains(answer.GetProperty("cautions").EnumerateArray(), caution => caution.GetString()!.StartsWith("No approval", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Losses_of_a_press_add_up_and_currents_obey_Ohm()
    {
        var answer = await caller.PostCircuit(Documents.Demo, "?units=si").Json(200);

        foreach (var press in answer.GetProperty("presses").EnumerateArray())
        {
            Assert.Equal(1, press.GetProperty("losses").EnumerateObject().Sum(part => part.Value.GetDouble()), tolerance: 1e-9);
            var actuator = press.GetProperty("actuators")[0];
            Assert.Equal(1.6 * actuator.GetProperty("current").Value(), actuator.GetProperty("voltage").Value(), tolerance: 1e-9);
            Assert.Equal(actuator.GetProperty("current").Value(), press.GetProperty("sourceCurrent").Value(), tolerance: 1e-9);
        }
    }

    [Fact]
    public async Task Document_without_a_circuit_is_a_422_that_says_so()
    {
        var fault = await caller.PostCircuit(Documents.Small).Fault(422);

        Assert.Contains("missing", fault.GetProperty("errors").GetProperty("/circuit")[0].GetString()!, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_wrong_part_is_told_at_once()
    {
        var demo = JsonNode.Parse(Documents.Demo)!;
        var parts = demo["circuit"]!["parts"]!;
        parts["lead-out"]!["length"] = "0 m";
        parts["valve"]!["noFire"] = "2 A";
        parts["fuse"]!["rating"] = 5;
        demo["circuit"]!["chassis"] = "frame";

        var errors = (await caller.PostCircuit(demo.ToJsonString()).Fault(422)).GetProperty("errors");

        Assert.Equal(["/circuit/chassis", "/circuit/parts/fuse/rating", "/circuit/parts/lead-out/length", "/circuit/parts/valve/noFire"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("?units=imperial", "?units")]
    [InlineData("?today=2026-11-25", "?today")]
    public async Task Query_that_does_not_fit_is_told(string query, string place) =>
        Assert.True((await caller.PostCircuit(Documents.Demo, query).Fault(422)).GetProperty("errors").TryGetProperty(place, out _));

    [Fact]
    public async Task Same_document_gives_the_same_bytes() =>
        Assert.Equal(await caller.PostCircuit(Documents.Demo).Text(), await caller.PostCircuit(Documents.Demo).Text());

    [Fact]
    public async Task Answer_that_takes_too_long_is_a_422_that_says_so()
    {
        await using var hurried = Service.With(("Limits:CircuitTime", "00:00:00.0001"));
        using var limited = hurried.Caller();

        var fault = await limited.PostCircuit(Documents.Demo).Fault(422);

        Assert.Contains("0.0001 s", fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
    }
}
