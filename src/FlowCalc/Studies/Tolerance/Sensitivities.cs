using System.Collections.Immutable;
using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Weighs the inputs of the main figures.</summary>
internal static class Sensitivities
{
    /// <summary>What the inputs explain of the main figures of every case.</summary>
    /// <param name="question">The question.</param>
    /// <param name="model">What was worked out of every sample.</param>
    /// <param name="samples">The samples.</param>
    /// <param name="hypercube">Where they lie.</param>
    /// <param name="options">Where inputs are weighed, and until when.</param>
    public static ImmutableArray<FigureSensitivity> Of(ToleranceQuestion question, StudyModel model, SampleRun samples, LatinHypercube hypercube, ParallelOptions options)
    {
        var mains = Mains(model).ToArray();
        var (inputs, all, bins) = (question.Variables.Length, question.Samples, FirstOrderIndex.Bins(question.Samples));
        var indices = new FirstOrderIndex[mains.Length, inputs];
        Parallel.For(0, inputs, options, input =>
        {
            options.CancellationToken.ThrowIfCancellationRequested();
            var bin = new int[all];
            for (var i = 0; i < all; i++) bin[i] = (int)((long)hypercube.Stratum(i, input) * bins / all);
            for (var main = 0; main < mains.Length; main++) indices[main, input] = FirstOrderIndex.Of(bin, bins, samples.Columns[mains[main].Column]);
        });
        return [.. mains.Select((main, at) =>
        {
            var found = Enumerable.Range(0, inputs).Select(input => new InputIndex(question.Variables[input].Thing.Path, indices[at, input])).Where(one => !double.IsNaN(one.Index.Value));
            // Of equals the first of the question stays first: the sort is stable.
            ImmutableArray<InputIndex> ordered = [.. found.OrderByDescending(one => one.Index.Value)];
            return new FigureSensitivity(main.Case, main.Figure, samples.Columns[main.Column].Count(double.IsFinite), ordered, SensitivityWording.Of(main.Figure, ordered));
        })];
    }

    static IEnumerable<(int Case, Figure Figure, int Column)> Mains(StudyModel model) =>
        from at in Enumerable.Range(0, model.Cases.Length)
        from figure in model.MainFigures
        select (at, figure, at * model.WidthOfCase + model.CaseFigures.IndexOf(figure));
}
