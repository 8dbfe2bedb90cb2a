using System.Collections.Immutable;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Explanations;

/// <summary>Puts the flows of a study's layouts and its own steps together.</summary>
internal sealed class StudyExplainer
{
    readonly ImmutableArray<LayoutExplanation>.Builder layouts = ImmutableArray.CreateBuilder<LayoutExplanation>();
    readonly List<string> leftOut = [];

    /// <summary>Where the study's own steps go.</summary>
    public StepLog Log { get; } = new();

    /// <summary>Explains the flow of a layout.</summary>
    /// <param name="name">Its name in the study.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="flow">Its flow; one that was not found has no steps.</param>
    /// <param name="cancellationToken">Asked at every run.</param>
    public void Add(string name, Layout layout, FlowResult flow, CancellationToken cancellationToken)
    {
        if (!flow.Report.Converged)
        {
            layouts.Add(new(name, [], []));
            return;
        }
        var explained = FlowExplainer.Of(layout, flow, cancellationToken);
        layouts.Add(new(name, explained.Steps, explained.States));
        Log.Used.UnionWith(explained.Equations);
        leftOut.AddRange(explained.LeftOut);
    }

    /// <summary>The whole.</summary>
    /// <param name="further">What it does not hold besides.</param>
    public StudyExplanation Whole(params string[] further) =>
        new(FlowExplainer.Sorted(Log), layouts.ToImmutable(), Log.Take(), [.. further.Concat(leftOut).Distinct()]);
}
