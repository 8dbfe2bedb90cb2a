using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>Solves changed layouts, and stops when enough work has been done.</summary>
/// <param name="points">Points of the layout.</param>
/// <param name="cancellation">Stops a solve.</param>
sealed class Trials(int points, CancellationToken cancellation)
{
    // A search has to end within the time that one request may take; on large layouts the solves are what costs.
    const int MostSolves = 60;
    const int MostPoints = 100_000;

    readonly int most = Math.Clamp(MostPoints / Math.Max(1, points), 1, MostSolves);

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
