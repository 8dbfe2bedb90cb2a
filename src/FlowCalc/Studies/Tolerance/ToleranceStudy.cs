using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Works a layout out many times, each time as it may turn out, and sums the answers up.</summary>
public static class ToleranceStudy
{
    // Samples between two reports of progress, and what a thread takes at once; the answer does not depend on it.
    const int Chunk = 16;

    /// <summary>How many numbers a study keeps: figures of all cases times samples. One number is eight bytes.</summary>
    /// <param name="question">The question.</param>
    public static long Numbers(ToleranceQuestion question)
    {
        ArgumentNullException.ThrowIfNull(question);
        return (long)Model(question).Width * question.Samples;
    }

    /// <summary>Runs a study.</summary>
    /// <param name="question">The question.</param>
    /// <param name="scheduler">Where samples are worked out beside the caller's thread.</param>
    /// <param name="progress">Told now and then, by any thread, how many samples are done; null for nobody.</param>
    /// <param name="cancellationToken">Asked throughout.</param>
    /// <returns>The spread. The same question gives the same bits on any number of threads.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The samples are outside their range.</exception>
    /// <exception cref="ArgumentException">Nothing varies, or a discharge is asked of a supply that is no bottle.</exception>
    /// <exception cref="OperationCanceledException">The token was cancelled.</exception>
    public static ToleranceResult Run(ToleranceQuestion question, TaskScheduler scheduler, IProgress<int>? progress, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(question);
        ArgumentNullException.ThrowIfNull(scheduler);
        ArgumentOutOfRangeException.ThrowIfLessThan(question.Samples, ToleranceQuestion.LeastSamples);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(question.Samples, LatinHypercube.MostSamples);
        if (question.Variables.IsDefaultOrEmpty) throw new ArgumentException("Nothing varies.", nameof(question));

        var model = Model(question);
        var samples = new SampleRun(question, model);
        var hypercube = new LatinHypercube(question.Samples, question.Variables.Length, question.Seed);
        samples.WorkOutDesign(cancellationToken);
        var done = 0;
        var chunks = (question.Samples + Chunk - 1) / Chunk;
        Parallel.For(0, chunks, new ParallelOptions { TaskScheduler = scheduler, CancellationToken = cancellationToken }, samples.NewWorker, (chunk, _, worker) =>
        {
            var (from, to) = (chunk * Chunk, Math.Min((chunk + 1) * Chunk, question.Samples));
            for (var index = from; index < to; index++) worker.WorkOut(hypercube, index, cancellationToken);
            progress?.Report(Interlocked.Add(ref done, to - from));
            return worker;
        }, samples.Merge);
        return StudySummary.Of(question, model, samples, hypercube, scheduler, cancellationToken);
    }

    static StudyModel Model(ToleranceQuestion question)
    {
        if (question.Answer == StudiedAnswer.Flow) return new FlowModel(question.Layout);
        if (question.Layout.Supply is not Layouts.BottleSupply) throw new ArgumentException("A discharge needs a bottle.", nameof(question));
        return new DischargeModel(question.Layout, question.IsEveryCase);
    }
}
