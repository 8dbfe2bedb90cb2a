using FlowCalc.Checks;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Tests.Checks;

public sealed class LayoutCheckTests
{
    static readonly DateOnly Day = new(2026, 11, 25);

    [Fact]
    public void Every_part_stands_in_its_place_with_the_findings_of_its_own_judgement()
    {
        var check = Check("raid-pickup", Day);

        Assert.Equal(Enum.GetValues<JobPart>(), check.Parts.Select(part => part.Part));
        Assert.Equal(check.Flow!.Judgement.Findings, check.Parts[(int)JobPart.Flow].Findings);
        Assert.Equal(check.Discharge!.Judgement.Findings, check.Parts[(int)JobPart.Discharge].Findings);
        Assert.Equal(check.CutList.Judgement.Findings, check.Parts[(int)JobPart.CutList].Findings);
        Assert.Equal(check.Mount!.Judgement.Findings, check.Parts[(int)JobPart.Mount].Findings);
        Assert.Equal(check.Circuit!.Judgement.Findings, check.Parts[(int)JobPart.Circuit].Findings);
        Assert.Equal(check.Coverage!.Judgement.Findings, check.Parts[(int)JobPart.Coverage].Findings);
        Assert.Equal(check.Calibration!.Judgement.Findings, check.Parts[(int)JobPart.Calibration].Findings);
        Assert.Equal(check.Upkeep!.Judgement.Findings, check.Parts[(int)JobPart.Upkeep].Findings);
        Assert.Equal(check.Parts.Max(part => part.Verdict), check.Verdict);
    }

    [Theory]
    [InlineData("boat-engine-space")]
    [InlineData("yacht-halocarbon")]
    [InlineData("cabinet-inert-gas")]
    public void Parts_without_data_have_a_reason_and_no_verdict(string example)
    {
        var check = Check(example, null);

        Assert.All(check.Parts, part => Assert.Equal(part.Verdict is null, part.Why is not null));
        Assert.Null(check.Mount);
        Assert.Equal(check.Parts.Max(part => part.Verdict ?? Severity.Pass), check.Verdict);
    }

    [Fact]
    public void The_same_check_is_the_same_to_the_last_character_on_any_number_of_threads()
    {
        static string[] Told(LayoutCheck check) => [.. check.AllFindings.Select(finding => finding.Message)];
        var first = Told(Check("raid-pickup", Day));
        using var alone = new OneAtATime();

        Assert.Equal(first, Told(LayoutCheck.Of(Read("raid-pickup"), new(UnitSystem.Metric, Day), alone.One, TestContext.Current.CancellationToken)));
    }

    [Fact]
    public async Task A_cancelled_check_ends()
    {
        using var cancelled = new CancellationTokenSource();
        await cancelled.CancelAsync();

        Assert.ThrowsAny<OperationCanceledException>(() => LayoutCheck.Of(Read("raid-pickup"), new(UnitSystem.Metric), TaskScheduler.Default, cancelled.Token));
    }

    [Fact]
    public void Cautions_name_the_firing_circuit_only_where_there_is_one()
    {
        Assert.Equal(Cautions.OfCircuit(Read("raid-pickup")), Check("raid-pickup", null).Cautions);
        Assert.Equal(Cautions.For(Read("boat-engine-space")), Check("boat-engine-space", null).Cautions);
    }

    static LayoutCheck Check(string example, DateOnly? day) => LayoutCheck.Of(Read(example), new(UnitSystem.Metric, day), TaskScheduler.Default, TestContext.Current.CancellationToken);

    static Layout Read(string example) => LayoutReader.Read(ExampleCatalogue.Find(example)!.Value).Layout!;

    sealed class OneAtATime : IDisposable
    {
        readonly ConcurrentExclusiveSchedulerPair pair = new(TaskScheduler.Default, 1);

        public TaskScheduler One => pair.ExclusiveScheduler;

        public void Dispose() => pair.Complete();
    }
}
