using FlowCalc.Layouts;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Benchmarks;

/// <summary>Times of whole studies of tolerances in the library, on all processors: ten nozzles, 10 000 samples, usual spreads; of the discharge one case.</summary>
internal static class ToleranceFigures
{
    const int Samples = 10_000;

    public static void Print()
    {
        var layout = LayoutReader.Read(CombDocument.Of(10)).Layout ?? throw new InvalidOperationException("The comb has a fault.");
        Line("tolerance-10000", layout, StudiedAnswer.Flow);
        Line("tolerance-discharge-10000", layout, StudiedAnswer.Discharge);
    }

    static void Line(string name, Layout layout, StudiedAnswer answer)
    {
        var question = new ToleranceQuestion { Layout = layout, Answer = answer, Samples = Samples, Variables = DefaultSpreads.Of(SpreadThings.Of(layout, answer)).Variables };
        QuickFigures.Line(name, QuickFigures.Once(() =>
        {
            var result = ToleranceStudy.Run(question, TaskScheduler.Default, null, CancellationToken.None);
            if (result.Unsolved.Count > 0 || result.Cases[0].Failed > 0) throw new InvalidOperationException("A sample has no answer.");
        }));
    }
}
