using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>Solves changed layouts, and stops when enough work has been done.</summary>
/// <param name="size">Size of the layout; see <see cref="SizeOf"/>; 0 for no solve at all.</param>
/// <param name="cancellation">Stops a solve.</param>
sealed class Trials(int size, CancellationToken cancellation)
{
    // A search has to end within the time that one request may take; on large layouts the solves are what costs.
    const int MostSolves = 120;
    const int MostSize = 100_000;

    // What a point costs of a gas or an agent that boils, against one of a liquid.
    const int Expanding = 20;

    readonly int most = Math.Clamp(MostSize / Math.Max(1, size), 1, MostSolves);

    /// <summary>What a solve of a layout costs: its points, and all that loses pressure between them.</summary>
    /// <param name="layout">The layout.</param>
    /// <returns>The number of them.</returns>
    public static int SizeOf(Layout layout)
    {
        var size = layout.Points.Length;
        foreach (var run in layout.Runs) size += run.Bends.Length + run.Fittings.Length;
        return layout.Agent.IsExpanding ? Expanding * size : size;
    }

    /// <summary>Solves done.</summary>
    public int Done { get; private set; }

    /// <summary>Whether a solve was refused because enough had been done.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>The flow of a changed layout; null where there is none, or where enough has been done.</summary>
    public FlowResult? Solve(Layout changed)
    {
        cancellation.ThrowIfCancellationRequested();
        if (Done >= most)
        {
            IsCutShort = true;
            return null;
        }
        Done++;
        var flow = SteadyFlow.Solve(changed, cancellation);
        return flow.Report.Converged ? flow : null;
    }
}
