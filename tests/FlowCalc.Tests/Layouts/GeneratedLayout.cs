using System.Text;
using CsCheck;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>A sound document made up at random: a tree with tees, bullheads, reducers, junctions, nozzles and caps.</summary>
/// <param name="Json">The document.</param>
/// <param name="Points">How many points it has.</param>
/// <param name="IsPlaced">Whether its points have places, so that lengths and bends follow from them.</param>
public sealed record GeneratedLayout(string Json, int Points, bool IsPlaced)
{
    /// <summary>How many of them to try: what <c>FLOWCALC_COUNT</c> says, else 10 000, or 100 000 where <c>FLOWCALC_LONG</c> is 1.</summary>
    public static int Count { get; } =
        int.TryParse(Environment.GetEnvironmentVariable("FLOWCALC_COUNT"), out var count) ? count : Environment.GetEnvironmentVariable("FLOWCALC_LONG") == "1" ? 100_000 : 10_000;

    /// <summary>Documents of 2 to about 40 points.</summary>
    public static Gen<GeneratedLayout> Any { get; } = Of(40);

    /// <summary>Documents of 2 to about so many points.</summary>
    public static Gen<GeneratedLayout> Of(int mostPoints) =>
        Gen.Select(Gen.Int[2, mostPoints], Gen.UInt.Array[20, 200], (points, numbers) => new GeneratedTree(new Tape(numbers), points).Build());

    /// <summary>The layout that the document reads as.</summary>
    public Layout Read()
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(Json), null, TestContext.Current.CancellationToken);
        return reading.Layout ?? throw new InvalidOperationException($"{string.Join("; ", reading.Faults)} in {Json}");
    }
}
