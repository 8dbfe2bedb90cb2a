using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Discharge;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Api.Tests.Studies;

namespace FlowCalc.Api.Tests.Cli;

public sealed class CommandTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("flow")]
    [InlineData("discharge")]
    [InlineData("cut-list")]
    [InlineData("check")]
    public async Task A_layout_in_JSON_is_what_the_service_answers(string command)
    {
        var own = await caller.PostLayout("/v1/" + command, Encoding.UTF8.GetBytes(Documents.Demo), "?units=us").Json(200);

        var said = await Said.OfAsync(Documents.Demo, command, "--json", "--units", "us");

        Assert.True(JsonElement.DeepEquals(own, JsonElement.Parse(said.Output)), said.Output[..200]);
        Assert.Equal(own.GetProperty("verdict").GetString() == "fail" ? 1 : 0, said.Code);
        Assert.Empty(said.Error);
    }

    [Theory]
    [InlineData("compare")]
    [InlineData("size")]
    [InlineData("tolerance")]
    public async Task A_study_in_JSON_is_what_the_service_answers(string command)
    {
        var request = StudyRequests.Kept(command).ToJsonString();
        var own = await caller.PostStudy(command, request).Json(200);

        var said = await Said.OfAsync(request, command, "--json");

        Assert.True(JsonElement.DeepEquals(own, JsonElement.Parse(said.Output)));
        Assert.NotEqual(2, said.Code);
    }

    [Theory]
    [InlineData("flow", "fuel-rail", "starved-nozzle")]
    [InlineData("discharge", "95 % out", "starved-nozzle")]
    [InlineData("cut-list", "Bend marks", "Verdict")]
    [InlineData("check", "Firing circuit", "Parts of the job")]
    public async Task A_table_is_plain_text_with_findings_verdict_and_cautions(string command, params string[] words)
    {
        var said = await Said.OfAsync(Documents.Demo, command);

        foreach (var word in (string[])[.. words, "Verdict: "]) Assert.Contains(word, said.Output, StringComparison.Ordinal);
        Assert.DoesNotContain('\u001b', said.Output);
        var joined = string.Join(' ', said.Output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        foreach (var caution in Findings.Cautions.For(Layouts.LayoutReader.Read(Encoding.UTF8.GetBytes(Documents.Demo), cancellationToken: TestContext.Current.CancellationToken).Layout!)) Assert.Contains(caution, joined, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tables_of_studies_name_what_was_chosen()
    {
        Assert.Contains("Ranking, best first", (await Said.OfAsync(StudyRequests.Kept("compare").ToJsonString(), "compare")).Output, StringComparison.Ordinal);
        Assert.Contains("choices were solved", (await Said.OfAsync(StudyRequests.Kept("size").ToJsonString(), "size")).Output, StringComparison.Ordinal);
        Assert.Contains("Verdicts of the samples", (await Said.OfAsync(StudyRequests.Kept("tolerance").ToJsonString(), "tolerance")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Code_tells_the_verdict_and_a_warning_only_where_it_is_asked_for()
    {
        var warned = JsonNode.Parse(DischargeDocuments.Small)!;
        var verdict = (await caller.PostFlow(warned.ToJsonString()).Json(200)).GetProperty("verdict").GetString();

        var plain = await Said.OfAsync(warned.ToJsonString(), "flow");
        var strict = await Said.OfAsync(warned.ToJsonString(), "flow", "--strict");

        Assert.Equal(1, (await Said.OfAsync(Documents.Demo, "flow")).Code);
        Assert.Equal(verdict == "fail" ? 1 : 0, plain.Code);
        Assert.Equal(verdict is "fail" or "warn" ? 1 : 0, strict.Code);
    }

    [Fact]
    public async Task A_warning_alone_is_a_pass_without_strict_and_is_told_with_it()
    {
        // A cut list of the demo warns and does not fail.
        Assert.Equal(0, (await Said.OfAsync(Documents.Demo, "cut-list")).Code);
        Assert.Equal(1, (await Said.OfAsync(Documents.Demo, "cut-list", "--strict")).Code);
    }

    [Fact]
    public async Task Faults_are_a_line_each_with_their_pointers_or_the_problem_of_the_service()
    {
        var plain = await Said.OfAsync("""{ "format": 1, "agent": "watr" }""", "flow");
        var json = await Said.OfAsync("""{ "format": 1, "agent": "watr" }""", "flow", "--json");

        Assert.Equal((2, 2), (plain.Code, json.Code));
        Assert.Contains(plain.Error.Split('\n'), line => line.StartsWith("/agent: ", StringComparison.Ordinal));
        Assert.Contains(plain.Error.Split('\n'), line => line.StartsWith("/runs: ", StringComparison.Ordinal));
        Assert.True(JsonElement.DeepEquals(await caller.PostFlow("""{ "format": 1, "agent": "watr" }""").Fault(422), JsonElement.Parse(json.Error)));
        Assert.Empty(plain.Output + json.Output);
    }

    [Theory]
    [InlineData("not JSON", "flow", "is not JSON")]
    [InlineData("", "flow", "is empty")]
    [InlineData("{}", "pour", "pour")]
    [InlineData("{}", "flow --units imperial", "imperial")]
    [InlineData("{}", "flow --units 7", "'7'")]
    [InlineData("{}", "report --paper 9 --format pdf", "'9'")]
    [InlineData("{}", "flow no-such-file.json", "no-such-file.json")]
    [InlineData("{}", "check --today tomorrow", "tomorrow")]
    [InlineData("{}", "", "command")]
    public async Task What_cannot_be_carried_out_is_said_and_ends_with_two(string document, string line, string words)
    {
        var said = await Said.OfAsync(document, line.Split(' ', StringSplitOptions.RemoveEmptyEntries));

        Assert.Equal(2, said.Code);
        Assert.Contains(words, said.Error, StringComparison.Ordinal);
        Assert.Empty(said.Output);
    }

    [Fact]
    public async Task Help_names_every_command()
    {
        var said = await Said.OfAsync("", "--help");

        Assert.Equal(0, said.Code);
        foreach (var command in (string[])["flow", "discharge", "compare", "size", "tolerance", "cut-list", "check", "report", "exchange"]) Assert.Contains(command, said.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cancelled_command_ends_with_two_and_says_so()
    {
        var said = await Said.OfAsync(Documents.Demo, new CancellationToken(canceled: true), "discharge");

        Assert.Equal(2, said.Code);
        Assert.NotEmpty(said.Error);
    }
}
