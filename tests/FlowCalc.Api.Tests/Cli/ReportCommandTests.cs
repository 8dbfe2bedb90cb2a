using System.Text;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Cli;

public sealed class ReportCommandTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    [Theory]
    [InlineData("html")]
    [InlineData("pdf")]
    public async Task A_report_is_the_file_that_the_service_gives_to_the_byte(string format)
    {
        using var own = await caller.PostLayout("/v1/report", Encoding.UTF8.GetBytes(Documents.Demo), $"?format={format}&paper=letter&by=A.%20Planner&today=2026-11-25");

        var said = await Said.OfAsync(Documents.Demo, "report", "--format", format, "--paper", "letter", "--by", "A. Planner", "--today", "2026-11-25");

        Assert.Equal(1, said.Code);
        Assert.Equal(await own.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken), said.Bytes);
    }

    [Fact]
    public async Task A_file_by_its_ending_is_a_PDF_and_nothing_else_is_written()
    {
        var path = Path.Combine(Path.GetTempPath(), $"flowcalc-{Guid.NewGuid():N}.pdf");
        try
        {
            var said = await Said.OfAsync(Documents.Demo, "report", "-o", path);

            Assert.Empty(said.Bytes);
            Assert.Equal("%PDF"u8.ToArray(), (await File.ReadAllBytesAsync(path, TestContext.Current.CancellationToken))[..4]);
        }
        finally
        {
            File.Delete(path);
        }
    }

    [Fact]
    public async Task A_file_for_another_program_is_the_one_that_the_service_gives()
    {
        using var own = await caller.PostLayout("/v1/exchange", Encoding.UTF8.GetBytes(Documents.Demo));

        var said = await Said.OfAsync(Documents.Demo, "exchange");
        var refused = await Said.OfAsync(Encoding.UTF8.GetString(Examples.ExampleCatalogue.Find("cabinet-inert-gas")!.Value.Span), "exchange");

        Assert.Equal(await own.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken), said.Bytes);
        Assert.Equal((0, 2), (said.Code, refused.Code));
        Assert.Contains("no liquid", refused.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_document_with_faults_gives_no_file()
    {
        var path = Path.Combine(Path.GetTempPath(), $"flowcalc-{Guid.NewGuid():N}.html");

        var said = await Said.OfAsync("""{ "format": 1 }""", "report", "-o", path);

        Assert.Equal(2, said.Code);
        Assert.Contains("/agent: ", said.Error, StringComparison.Ordinal);
        Assert.False(File.Exists(path));
    }

    [Theory]
    [InlineData(".svg", "--output", "report", "-o", "line.svg")]
    [InlineData("--format asks for html", "ends in .pdf", "report", "-o", "line.pdf", "--format", "html")]
    [InlineData("--by", "control characters", "report", "--by", "A\nB")]
    [InlineData("--date", "1 to 100", "report", "--date", "")]
    [InlineData("--strict", "", "exchange", "--strict")]
    [InlineData("--units", "", "exchange", "--units", "us")]
    public async Task What_a_command_cannot_do_is_refused_in_words_and_nothing_is_written(string word, string other, params string[] line)
    {
        var said = await Said.OfAsync(Documents.Demo, line);

        Assert.Equal(2, said.Code);
        Assert.Contains(word, said.Error, StringComparison.Ordinal);
        Assert.Contains(other, said.Error, StringComparison.Ordinal);
        Assert.Empty(said.Bytes);
        Assert.False(File.Exists("line.svg") || File.Exists("line.pdf"));
    }

    [Theory]
    [InlineData("")]
    [InlineData(" \r\n")]
    public async Task An_empty_input_is_told_without_a_word_of_calls_over_the_network(string document)
    {
        var said = await Said.OfAsync(document, "flow");

        Assert.Equal(2, said.Code);
        Assert.Contains("Standard input is empty", said.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("GET", said.Error, StringComparison.Ordinal);
    }
}
