using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Reports;
using FlowCalc.Workbench.Tests.Solving;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Rendering;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging.Abstractions;

namespace FlowCalc.Workbench.Tests.Reports;

public sealed class StoppedPageTests
{
    static readonly StaticMarkup Markup = new(new ServiceCollection().BuildServiceProvider(), NullLoggerFactory.Instance);

    [Fact]
    public async Task Page_is_not_written_where_its_time_is_up()
    {
        var content = ReportContent.Of(new ReportSource(Solved.Check("raid-pickup")), TestContext.Current.CancellationToken);

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Markup.RenderAsync<Report>(new() { [nameof(Report.Content)] = content }, new CancellationToken(canceled: true)));
    }

    [Fact]
    public async Task Writing_stops_at_the_next_component_once_it_is_asked_to()
    {
        using var stop = new CancellationTokenSource();
        var begun = 0;

        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => Markup.RenderAsync<Parts>(new() { [nameof(Parts.Begun)] = () => { if (++begun == 3) stop.Cancel(); } }, stop.Token));

        Assert.Equal(3, begun);
    }

    sealed class Parts : ComponentBase
    {
        [Parameter] public Action? Begun { get; set; }

        protected override void BuildRenderTree(RenderTreeBuilder builder)
        {
            for (var at = 0; at < 10; at++)
            {
                builder.OpenComponent<Part>(0);
                builder.AddComponentParameter(1, nameof(Part.Begun), Begun);
                builder.CloseComponent();
            }
        }
    }

    sealed class Part : ComponentBase
    {
        [Parameter] public Action? Begun { get; set; }

        protected override void OnInitialized() => Begun!();
    }
}
