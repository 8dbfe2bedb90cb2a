using System.Diagnostics;
using System.Diagnostics.Metrics;

namespace FlowCalc.Api.Operations;

/// <summary>What the service counts of itself, for whoever listens; nothing of a document is in it.</summary>
internal sealed class ServiceMeter
{
    /// <summary>Name of the meter and of the source of traces.</summary>
    public const string Name = "FlowCalc";

    /// <summary>What came of a call: an answer, a fault of the document or the query, too little time, or no place or room.</summary>
    public const string Answered = "answered", Fault = "fault", TooSlow = "too-slow", Busy = "busy";

    readonly Counter<long> answers;
    readonly Histogram<double> duration;
    readonly Histogram<int> iterations;

    /// <summary>Makes the instruments.</summary>
    public ServiceMeter(IMeterFactory factory)
    {
        var meter = factory.Create(Name);
        answers = meter.CreateCounter<long>("flowcalc.answers", "{answer}", "Calls on a document, by call and by what came of them.");
        duration = meter.CreateHistogram<double>("flowcalc.work.duration", "s", "From when the work begins to the text of the answer or the fault, by call.");
        iterations = meter.CreateHistogram<int>("flowcalc.flow.iterations", "{step}", "Newton steps of a steady flow.");
        Meter = meter;
    }

    /// <summary>The meter, for what is observed elsewhere.</summary>
    public Meter Meter { get; }

    /// <summary>Source of traces: one activity a call, of what it works out.</summary>
    public static ActivitySource Source { get; } = new(Name);

    /// <summary>Counts a call.</summary>
    /// <param name="call">Its path.</param>
    /// <param name="outcome">What came of it.</param>
    /// <param name="began">When its work began, a timestamp of <see cref="Stopwatch"/>.</param>
    public void Count(string call, string outcome, long began)
    {
        answers.Add(1, new("call", call), new("outcome", outcome));
        if (duration.Enabled) duration.Record(Stopwatch.GetElapsedTime(began).TotalSeconds, new KeyValuePair<string, object?>("call", call));
    }

    /// <summary>Counts the steps of a flow.</summary>
    public void Solved(int steps) => iterations.Record(steps);
}
