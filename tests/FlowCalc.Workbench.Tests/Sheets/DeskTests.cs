using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Workbench.Desks;
using FlowCalc.Workbench.Solving;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class DeskTests
{
    [Fact]
    public async Task A_cure_offered_is_a_step_whose_answer_follows()
    {
        using var places = new WorkPlaces(TaskScheduler.Default);
        using var desk = new Desk(places, NullLogger<Desk>.Instance);
        desk.Open(System.Text.Encoding.UTF8.GetString(ExampleCatalogue.Find("raid-pickup")!.Value.Span));
        await Until(() => desk.IsFresh);
        Assert.Equal(Severity.Fail, desk.Solved!.Judgement!.Verdict);
        var cure = desk.Solved.Judgement.Findings.First(finding => finding.Cure is not null).Cure!;

        desk.Apply(cure);
        await Until(() => desk.IsFresh);

        Assert.Empty(desk.Sheet.Faults);
        Assert.True(desk.Solved.Judgement!.Verdict < Severity.Warn);
        Assert.True(desk.History.CanUndo);
    }

    [Fact]
    public void Nozzle_that_would_be_one_point_too_many_is_told_and_leaves_no_step()
    {
        using var places = new WorkPlaces(TaskScheduler.Default);
        using var desk = new Desk(places, NullLogger<Desk>.Instance);
        desk.Open(Pages.LargeTests.Line(Workbench.Sheets.Sheet.MostPoints, "full"));
        Assert.Empty(desk.Sheet.Faults);
        var before = desk.Sheet.Text;
        desk.Take(Tool.AddNozzle);

        Pointing.At(desk, "runs/bottle-T1");

        Assert.Contains("cannot be added there", desk.Notice, StringComparison.Ordinal);
        Assert.Equal(before, desk.Sheet.Text);
        Assert.False(desk.History.CanUndo);
    }

    static async Task Until(Func<bool> holds)
    {
        for (var waited = 0; !holds(); waited++)
        {
            Assert.True(waited < 2_000, "It did not come to hold.");
            await Task.Delay(10, TestContext.Current.CancellationToken);
        }
    }
}
