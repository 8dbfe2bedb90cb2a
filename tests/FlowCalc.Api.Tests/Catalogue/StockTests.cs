using System.Text.Json;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Catalogue;

public sealed class StockTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Bore_of_every_tube_is_its_outside_diameter_less_two_walls()
    {
        var answer = await caller.Get("/v1/tubes").Json(200);

        var tubes = answer.GetProperty("tubes").EnumerateArray().ToList();
        Assert.True(tubes.Count >= 20, $"{tubes.Count} tubes");
        foreach (var tube in tubes)
            Assert.Equal(tube.GetProperty("outsideDiameter").Value() - 2 * tube.GetProperty("wall").Value(), tube.GetProperty("bore").Value(), tolerance: 1e-6);
    }

    [Fact]
    public async Task Fittings_are_listed_with_their_kind_and_a_note()
    {
        var answer = await caller.Get("/v1/fittings").Json(200);

        var fittings = answer.GetProperty("fittings").EnumerateArray().ToList();
        Assert.Contains(fittings, fitting => fitting.GetProperty("kind").GetString() == "elbow" && fitting.GetProperty("lossCoefficient").ValueKind == JsonValueKind.Number);
        Assert.All(fittings, fitting => Assert.NotEmpty(fitting.GetProperty("note").GetString()!));
    }

    [Theory]
    [InlineData("/v1/tubes?units=feet")]
    [InlineData("/v1/fittings?unit=us")]
    public async Task Query_that_does_not_fit_is_refused(string path) => await caller.Get(path).Fault(422);
}
