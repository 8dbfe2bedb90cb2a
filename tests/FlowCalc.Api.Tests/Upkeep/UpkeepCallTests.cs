using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Upkeep;

public sealed class UpkeepCallTests(Service service) : IDisposable
{
    const string Day = "?today=2026-11-25";

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Fact]
    public async Task Demo_is_in_date_and_its_gauge_is_sound()
    {
        var answer = await caller.PostUpkeep(Documents.Demo, Day + "&temperature=6%20%C2%B0C").Json(200);

        Assert.Equal(("battery", "2027-01-31"), (answer.GetProperty("next").GetString(), answer.GetProperty("nextDue").GetString()));
        Assert.Equal(["2028-03-14", "2029-02-28", "2027-01-31"], answer.GetProperty("dates").EnumerateArray().Select(date => date.GetProperty("due").GetString()));
        var gauge = answer.GetProperty("gauge");
        Assert.Equal(gauge.GetProperty("expected").Value(), gauge.GetProperty("expectedThen").Value(), tolerance: 1e-9);
        Assert.InRange(gauge.GetProperty("lost").GetDouble(), -0.05, 0.05);
        Assert.True(gauge.GetProperty("readInGreen").GetBoolean());
        Assert.Equal(0.01, answer.GetProperty("weight").GetProperty("lost").GetDouble(), tolerance: 1e-6);
        Assert.NotEqual("fail", answer.GetProperty("verdict").GetString());
    }

    [Fact]
    public async Task Another_day_is_another_answer_and_the_machines_clock_is_none()
    {
        var answer = await caller.PostUpkeep(Documents.Demo, "?today=2028-03-15").Json(200);

        Assert.Equal("fail", answer.GetProperty("verdict").GetString());
        Assert.Contains(answer.GetProperty("findings").EnumerateArray(), finding => finding.GetProperty("code").GetString() == "service-overdue");
        Assert.Equal("2028-03-15", answer.GetProperty("today").GetString());
    }

    [Theory]
    [InlineData("", "?today", "missing")]
    [InlineData("?today=25.11.2026", "?today", "ISO 8601")]
    [InlineData("?today=2026-02-30", "?today", "ISO 8601")]
    [InlineData("?today=2026-11", "?today", "ISO 8601")]
    [InlineData("?today=2026-11-25&today=2026-11-26", "?today", "more than once")]
    [InlineData(Day + "&temperature=5", "?temperature", "")]
    [InlineData(Day + "&temperature=900%20K", "?temperature", "-100 to 300")]
    [InlineData(Day + "&format=pdf", "?format", "json and ics")]
    [InlineData(Day + "&units=imperial", "?units", "metric")]
    [InlineData(Day + "&clock=utc", "?clock", "does not take it")]
    public async Task Query_that_does_not_fit_is_told(string query, string place, string words) =>
        Assert.Contains(words, (await caller.PostUpkeep(Documents.Demo, query).Fault(422)).GetProperty("errors").GetProperty(place)[0].GetString()!, StringComparison.Ordinal);

    [Fact]
    public async Task Every_wrong_word_of_the_query_is_told_at_once()
    {
        var errors = (await caller.PostUpkeep(Documents.Demo, "?temperature=5&format=pdf").Fault(422)).GetProperty("errors");

        Assert.Equal(["?format", "?temperature", "?today"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Dates_after_the_day_are_faults_with_their_places_all_at_once()
    {
        var errors = (await caller.PostUpkeep(Documents.Demo, "?today=2025-11-25").Fault(422)).GetProperty("errors");

        Assert.Equal(["/service/gauge/on", "/service/lastService", "/service/rules/battery/from", "/service/weighing/on"], errors.EnumerateObject().Select(error => error.Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Document_without_a_service_is_a_422_that_says_so() =>
        Assert.Contains("missing", (await caller.PostUpkeep(Documents.Small, Day).Fault(422)).GetProperty("errors").GetProperty("/service")[0].GetString()!, StringComparison.Ordinal);

    [Fact]
    public async Task Flow_is_answered_with_dates_in_the_future_as_it_asks_for_no_day()
    {
        var demo = JsonNode.Parse(Documents.Demo)!;
        demo["service"]!["lastService"] = "2900-01-01";

        await caller.PostFlow(demo.ToJsonString()).Json(200);
    }
}
