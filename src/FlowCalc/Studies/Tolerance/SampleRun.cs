using FlowCalc.Findings;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>All samples of a study: the figures by column, and what was counted. Every sample has its own place, and counts are whole numbers, so that no order of work shows.</summary>
internal sealed class SampleRun
{
    readonly ToleranceQuestion question;
    readonly StudyModel model;
    readonly SampledLayout layouts;
    readonly Lock gate = new();

    /// <summary>Makes room for the samples of a question.</summary>
    /// <param name="question">The question.</param>
    /// <param name="model">What is worked out of each.</param>
    public SampleRun(ToleranceQuestion question, StudyModel model)
    {
        (this.question, this.model) = (question, model);
        layouts = new(question.Layout, question.Variables);
        Columns = new double[model.Width][];
        for (var column = 0; column < Columns.Length; column++) Columns[column] = new double[question.Samples];
        Design = new double[model.Width];
        Verdicts = new int[(int)Severity.Fail + 1];
        Failures = new Dictionary<string, int>[model.Cases.Length];
        for (var at = 0; at < Failures.Length; at++) Failures[at] = new(StringComparer.Ordinal);
    }

    /// <summary>The figures: by column, then by sample.</summary>
    public double[][] Columns { get; }

    /// <summary>The figures of the design.</summary>
    public double[] Design { get; }

    /// <summary>Samples by verdict.</summary>
    public int[] Verdicts { get; }

    /// <summary>Samples that could not be judged.</summary>
    public int Unsolved { get; private set; }

    /// <summary>By case the reasons why samples have no answer, and their number.</summary>
    public Dictionary<string, int>[] Failures { get; }

    /// <summary>Samples by what was found in them.</summary>
    public Dictionary<(string Code, string Where, Severity Severity), int> Findings { get; } = [];

    /// <summary>Works the design itself out.</summary>
    /// <param name="cancellationToken">Asked throughout.</param>
    public void WorkOutDesign(CancellationToken cancellationToken)
    {
        Span<double> values = new double[question.Variables.Length];
        for (var i = 0; i < values.Length; i++) values[i] = question.Variables[i].Thing.Design;
        var sample = layouts.Of(values, out var warmer);
        var tally = new FindingTally();
        tally.Begin();
        model.Answer(sample, warmer, Design, new string?[model.Cases.Length], tally, cancellationToken);
    }

    /// <summary>What one thread needs.</summary>
    public Worker NewWorker() => new(this);

    /// <summary>Takes over what a thread has counted.</summary>
    /// <param name="worker">What it had.</param>
    public void Merge(Worker worker)
    {
        lock (gate)
        {
            for (var severity = 0; severity < Verdicts.Length; severity++) Verdicts[severity] += worker.Verdicts[severity];
            Unsolved += worker.Unsolved;
            foreach (var (found, count) in worker.Tally.Answers) Add(Findings, found, count);
            for (var at = 0; at < Failures.Length; at++)
                foreach (var (reason, count) in worker.Failures[at]) Add(Failures[at], reason, count);
        }
    }

    static void Add<TKey>(Dictionary<TKey, int> counts, TKey key, int count) where TKey : notnull
    {
        counts.TryGetValue(key, out var known);
        counts[key] = known + count;
    }

    /// <summary>What one thread works with.</summary>
    internal sealed class Worker(SampleRun all)
    {
        readonly double[] values = new double[all.question.Variables.Length];
        readonly double[] row = new double[all.model.Width];
        readonly string?[] failures = new string?[all.model.Cases.Length];

        /// <summary>What was found.</summary>
        public FindingTally Tally { get; } = new();

        /// <summary>Samples by verdict.</summary>
        public int[] Verdicts { get; } = new int[all.Verdicts.Length];

        /// <summary>Samples that could not be judged.</summary>
        public int Unsolved { get; private set; }

        /// <summary>By case the reasons why samples have no answer, and their number.</summary>
        public Dictionary<string, int>[] Failures { get; } = [.. all.Failures.Select(_ => new Dictionary<string, int>(StringComparer.Ordinal))];

        /// <summary>Works a sample out.</summary>
        /// <param name="hypercube">Where samples lie.</param>
        /// <param name="index">The sample.</param>
        /// <param name="cancellationToken">Asked throughout.</param>
        public void WorkOut(LatinHypercube hypercube, int index, CancellationToken cancellationToken)
        {
            cancellationToken.ThrowIfCancellationRequested();
            for (var i = 0; i < values.Length; i++) values[i] = all.question.Variables[i].Values.At(hypercube.At(index, i));
            var sample = all.layouts.Of(values, out var warmer);
            Array.Clear(failures);
            Tally.Begin();
            all.model.Answer(sample, warmer, row, failures, Tally, cancellationToken);
            for (var column = 0; column < row.Length; column++) all.Columns[column][index] = row[column];
            for (var at = 0; at < failures.Length; at++)
                if (failures[at] is { } reason) Add(Failures[at], reason, 1);
            // A flow that was not found cannot be judged; a case of a discharge that has no answer is a finding.
            if (all.question.Answer == StudiedAnswer.Flow && failures[0] is not null) Unsolved++;
            else
            {
                Tally.End();
                Verdicts[(int)Tally.Worst]++;
            }
        }
    }
}
