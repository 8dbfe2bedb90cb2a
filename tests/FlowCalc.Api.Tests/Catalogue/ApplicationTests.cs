using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Tests.Catalogue;

public sealed class ApplicationTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Every_application_is_listed_with_what_it_stands_for_and_whose_that_is()
    {
        var answer = await caller.Get("/v1/applications").Json(200);

        var applications = answer.GetProperty("applications").EnumerateArray().ToDictionary(one => one.GetProperty("id").GetString()!);
        Assert.Equal(["general", "motorsport", "marine-engine-space", "machine", "electrical-cabinet"], applications.Keys);
        var race = applications["motorsport"];
        Assert.True(race.GetProperty("worksAnyWayUp").GetBoolean());
        Assert.Equal("local", race.GetProperty("protection").GetString());
        Assert.Equal(2, race.GetProperty("leastZones").GetInt32());
        Assert.Equal((10, 30), (race.GetProperty("requirements")[0].GetProperty("earliest").Value(), race.GetProperty("requirements")[0].GetProperty("latest").Value()));
        Assert.Equal(25, race.GetProperty("loads")[0].GetProperty("acceleration").GetDouble());
        Assert.Equal(["carbon-dioxide", "inert", "boiling"], applications["marine-engine-space"].GetProperty("requirements").EnumerateArray().Select(asked => asked.GetProperty("agents").GetString()));
        Assert.All(applications.Values, one => Assert.NotEmpty(one.GetProperty("upkeep").EnumerateArray()));
        var sources = answer.GetProperty("sources").EnumerateArray().Select(source => source.GetProperty("key").GetString()).ToHashSet();
        Assert.All(applications.Values.SelectMany(one => one.GetProperty("sources").EnumerateArray()), key => Assert.Contains(key.GetString(), sources));
    }

    [Fact]
    public void Every_application_of_the_engine_has_its_row_in_order() =>
        Assert.Equal(Enum.GetValues<Application>(), ApplicationDefaults.All.Select(one => one.Application));

    [Theory]
    [InlineData("?unit=us")]
    [InlineData("?units=imperial")]
    public async Task Query_that_does_not_fit_is_told(string query) => await caller.Get("/v1/applications" + query).Fault(422);
}
