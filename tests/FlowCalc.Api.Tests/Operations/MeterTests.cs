using System.Collections.Concurrent;
using System.Diagnostics.Metrics;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Operations;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Api.Tests.Operations;

public sealed class MeterTests
{
    [Fact]
    public async Task Answers_faults_and_lack_of_time_are_counted_by_call()
    {
        await using var service = Service.With(("Limits:DischargeTime", "00:00:00.0001"));
        using var caller = service.Caller();
        using var counts = new Counts(service.Services.GetRequiredService<ServiceMeter>().Meter);

        await caller.PostFlow(Documents.Small).Json(200);
        await caller.PostFlow(Documents.Small).Json(200);
        await caller.PostFlow("""{ "format": 1 }""").Fault(422);
        await caller.PostDischarge(Documents.Demo).Fault(422);

        Assert.Equal(2, counts.Of("flowcalc.answers", "/v1/flow", "answered"));
        Assert.Equal(1, counts.Of("flowcalc.answers", "/v1/flow", "fault"));
        Assert.Equal(1, counts.Of("flowcalc.answers", "/v1/discharge", "too-slow"));
        Assert.Equal(2, counts.Measured("flowcalc.flow.iterations"));
        Assert.Equal(4, counts.Measured("flowcalc.work.duration"));
        counts.Observe();
        foreach (var observed in (string[])["flowcalc.jobs.running", "flowcalc.jobs.waiting", "flowcalc.work.running", "flowcalc.work.waiting", "flowcalc.held"]) Assert.Equal(1, counts.Measured(observed));
    }

    [Fact]
    public async Task Requests_at_work_and_in_the_queue_and_what_they_hold_are_observed()
    {
        await using var service = Service.With(("Limits:Concurrent", "1"), ("Limits:Waiting", "1"));
        using var caller = service.Caller();
        using var counts = new Counts(service.Services.GetRequiredService<ServiceMeter>().Meter);
        var places = service.Services.GetRequiredService<WorkPlaces>();
        var taken = await places.TakeAsync(TestContext.Current.CancellationToken);
        var waiting = caller.PostFlow(Documents.Small);
        while (places.Counts().Waiting == 0) await Task.Delay(5, TestContext.Current.CancellationToken);

        counts.Observe();
        await caller.PostFlow(Documents.Small).Fault(429);
        taken.Dispose();
        await waiting.Json(200);

        Assert.Equal((1, 1), (counts.Last("flowcalc.work.running"), counts.Last("flowcalc.work.waiting")));
        Assert.InRange(counts.Last("flowcalc.held"), Documents.Small.Length, 2 * Documents.Small.Length);
        Assert.Equal(1, counts.Of("flowcalc.answers", "/v1/flow", "busy"));
    }

    // Hears one service's own meter, whatever other services in this process count.
    sealed class Counts : IDisposable
    {
        readonly MeterListener listener = new();
        readonly ConcurrentBag<(string Name, string Call, string Outcome)> heard = [];
        readonly ConcurrentDictionary<string, long> last = [];

        public Counts(Meter meter)
        {
            listener.InstrumentPublished = (instrument, hearing) =>
            {
                if (ReferenceEquals(instrument.Meter, meter)) hearing.EnableMeasurementEvents(instrument);
            };
            listener.SetMeasurementEventCallback<long>((instrument, value, tags, _) =>
            {
                last[instrument.Name] = value;
                Add(instrument, tags);
            });
            listener.SetMeasurementEventCallback<int>((instrument, _, tags, _) => Add(instrument, tags));
            listener.SetMeasurementEventCallback<double>((instrument, _, tags, _) => Add(instrument, tags));
            listener.Start();
        }

        public int Of(string name, string call, string outcome) => heard.Count(one => one == (name, call, outcome));

        public int Measured(string name) => heard.Count(one => one.Name == name);

        public long Last(string name) => last[name];

        public void Observe() => listener.RecordObservableInstruments();

        public void Dispose() => listener.Dispose();

        void Add(Instrument instrument, ReadOnlySpan<KeyValuePair<string, object?>> tags)
        {
            string Tag(ReadOnlySpan<KeyValuePair<string, object?>> all, string name)
            {
                foreach (var (key, value) in all)
                    if (key == name) return value as string ?? "";
                return "";
            }
            heard.Add((instrument.Name, Tag(tags, "call"), Tag(tags, "outcome")));
        }
    }
}
