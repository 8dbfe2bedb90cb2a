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
}
