using System.Text;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Studies.Comparing;
using FlowCalc.Studies.Reading;

namespace FlowCalc.Benchmarks;

/// <summary>Times of studies in the library, from the request's text to the result.</summary>
internal static class StudyFigures
{
    public static void Print()
    {
        QuickFigures.Line("compare-4", QuickFigures.Time(Compare));
        SizeFigures.Print();
    }

    // Four bores of the trunk's first run, with flow and discharge of each.
    static void Compare()
    {
        var request = Encoding.UTF8.GetBytes($$"""{"layout":{{Encoding.UTF8.GetString(CombDocument.Of(10))}},"variants":[{{string.Join(',', ((string[])["6 mm", "7 mm", "10 mm", "12 mm"]).Select(bore => $$"""{"name":"{{bore}}","set":{"runs/S-T1/bore":"{{bore}}"} }"""))}}]}""");
        var reading = CompareReader.Read(request, new LayoutReaderOptions(), 4, CancellationToken.None);
        Comparison.Of(reading.Request ?? throw new InvalidOperationException(reading.Faults[0].Message), UnitSystem.Metric, TaskScheduler.Default, CancellationToken.None);
    }
}
