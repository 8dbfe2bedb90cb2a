using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Upkeep;

/// <summary>Calendars against RFC 5545: lines of at most 75 octets that end in CR LF and are folded by a space (3.1), escaped text (3.3.11), dates (3.3.4), required properties (3.6, 3.6.1). From memory; folding also as quoted on public pages (seen).</summary>
public sealed class CalendarTests(Service service) : IDisposable
{
    const string Day = "?today=2026-11-25&format=ics";

    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    async Task<string> Calendar(string document, string query = Day)
    {
        using var response = await caller.PostUpkeep(document, query);
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Equal("text/calendar; charset=utf-8", response.Content.Headers.ContentType!.ToString());
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    static string Titled(string title)
    {
        var demo = JsonNode.Parse(Documents.Demo)!;
        demo["title"] = title;
        return demo.ToJsonString();
    }

    static string[] Unfolded(string calendar) => calendar.Replace("\r\n ", "", StringComparison.Ordinal).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);

    [Fact]
    public async Task Calendar_has_an_event_of_a_whole_day_for_each_date()
    {
        var lines = Unfolded(await Calendar(Documents.Demo));

        Assert.Equal(("BEGIN:VCALENDAR", "END:VCALENDAR"), (lines[0], lines[^1]));
        Assert.Contains("VERSION:2.0", lines);
        Assert.Contains("PRODID:-//FlowCalc//Upkeep//EN", lines);
        Assert.Equal(["DTSTART;VALUE=DATE:20270131", "DTSTART;VALUE=DATE:20280314", "DTSTART;VALUE=DATE:20290228"], lines.Where(line => line.StartsWith("DTSTART", StringComparison.Ordinal)).Order(StringComparer.Ordinal));
        Assert.Equal(3, lines.Count(line => line == "BEGIN:VEVENT"));
    }

    [Fact]
    public async Task Stamp_is_the_day_that_is_asked_for_and_ids_follow_from_what_is_due()
    {
        var (one, same, later) = (await Calendar(Documents.Demo), await Calendar(Documents.Demo), await Calendar(Documents.Demo, "?today=2026-12-01&format=ics"));

        Assert.Equal(one, same);
        Assert.Equal(3, Unfolded(one).Count(line => line == "DTSTAMP:20261125T000000Z"));
        string[] Ids(string calendar) => [.. Unfolded(calendar).Where(line => line.StartsWith("UID:", StringComparison.Ordinal))];
        Assert.Equal(3, Ids(one).Distinct().Count());
        Assert.Equal(Ids(one), Ids(later));
        Assert.DoesNotContain(Unfolded(one), line => line.StartsWith("CREATED", StringComparison.Ordinal) || line.StartsWith("LAST-MODIFIED", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Lines_are_folded_at_75_octets_and_no_character_is_torn()
    {
        var title = string.Concat(Enumerable.Repeat("Löschanlage für den Geländewagen ", 8)).Trim();
        var calendar = await Calendar(Titled(title));

        Assert.All(calendar.Split("\r\n"), line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
        Assert.DoesNotContain('\uFFFD', calendar);
        Assert.Contains(Unfolded(calendar), line => line == $"SUMMARY:service due: {title}");
        Assert.DoesNotContain("\n", calendar.Replace("\r\n", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    // The text of the RFC's own example is "Project XYZ Final Review", a line break, "Conference Room - 3B", a line break, "Come Prepared."
    [Fact]
    public async Task Text_is_escaped_so_that_a_title_can_add_no_line()
    {
        var lines = Unfolded(await Calendar(Titled("Project XYZ Final Review\nConference Room - 3B\nCome Prepared.")));

        Assert.Contains(@"SUMMARY:service due: Project XYZ Final Review\nConference Room - 3B\nCome Prepared.", lines);
        Assert.Contains(@"SUMMARY:service due: a\;b\,c\\d\nBEGIN:VALARM", Unfolded(await Calendar(Titled("a;b,c\\d\nBEGIN:VALARM"))));
        Assert.DoesNotContain("BEGIN:VALARM", lines);
    }

    [Fact]
    public async Task A_fault_is_told_as_a_problem_and_not_as_a_calendar()
    {
        var fault = await caller.PostUpkeep(Documents.Small, Day).Fault(422);

        Assert.True(fault.GetProperty("errors").TryGetProperty("/service", out _));
    }
}
