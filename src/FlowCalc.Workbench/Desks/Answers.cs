using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Solving;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Workbench.Desks;

/// <summary>Works answers out beside the page: the flow at once, the discharge when typing rests. Only the newest question is answered.</summary>
sealed partial class Answers(WorkPlaces places, ILogger log) : IDisposable
{
    static readonly TimeSpan Rest = TimeSpan.FromMilliseconds(500), Longest = TimeSpan.FromSeconds(30);

    CancellationTokenSource? asked;

    /// <summary>The last answer.</summary>
    public SolvedLayout? Solved { get; private set; }

    /// <summary>Why there is none to the newest question; null where there is.</summary>
    public string? Failure { get; private set; }

    /// <summary>Whether a discharge is being followed, or about to be.</summary>
    public bool IsDischarging { get; private set; }

    /// <summary>Raised after every change; on any thread.</summary>
    public event Action? Changed;

    /// <summary>Asks anew; what was asked before is dropped.</summary>
    /// <param name="layout">The layout; null where there is none to ask about.</param>
    /// <param name="units">The system of units of sentences.</param>
    public void Work(Layout? layout, UnitSystem units)
    {
        Dispose();
        (Failure, IsDischarging) = (null, false);
        if (layout is not null)
        {
            asked = new CancellationTokenSource(Longest);
            _ = AnswerAsync(layout, units, asked, asked.Token);
        }
        Raise();
    }

    /// <summary>Drops the last answer.</summary>
    public void Forget() => Solved = null;

    /// <summary>Tells of a change.</summary>
    public void Raise() => Changed?.Invoke();

    /// <inheritdoc />
    public void Dispose()
    {
        asked?.Cancel();
        asked?.Dispose();
        asked = null;
    }

    // Runs on the page's dispatcher between its awaits, so the fields need no lock.
    async Task AnswerAsync(Layout layout, UnitSystem units, CancellationTokenSource mine, CancellationToken cancel)
    {
        try
        {
            var flow = await places.DoAsync(() => SolvedLayout.OfFlow(layout, units, cancel), cancel);
            // Another question may have come between the end of the work and this line.
            cancel.ThrowIfCancellationRequested();
            Solved = flow;
            if (Solved.Judgement is null) Failure = Solved.Flow.Report.Failure ?? "The flow did not converge.";
            IsDischarging = layout.Supply is BottleSupply;
            Raise();
            if (!IsDischarging) return;
            await Task.Delay(Rest, cancel);
            var whole = await places.DoAsync(() => flow.WithDischarge(places.Cases, cancel), cancel);
            cancel.ThrowIfCancellationRequested();
            Solved = whole;
        }
        catch (OperationCanceledException) when (asked != mine)
        {
            return;
        }
        catch (OperationCanceledException)
        {
            Failure = $"There was no answer within {Longest.TotalSeconds:0} s; the service has calls for larger layouts.";
        }
        catch (Exception unforeseen)
        {
            // Nobody awaits this: what is not caught here would be seen by nobody.
            Unforeseen(log, unforeseen);
            Failure = "The answer ended with an unforeseen error, which the service has logged.";
        }
        IsDischarging = false;
        Raise();
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "An answer of an open page ended with an unforeseen error.")]
    static partial void Unforeseen(ILogger log, Exception unforeseen);
}
