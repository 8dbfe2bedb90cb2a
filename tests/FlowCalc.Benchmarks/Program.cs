using System.Globalization;
using FlowCalc.Benchmarks;

if (args is ["quick", .. var asked])
{
    int[] sizes = asked.Length > 0 ? [.. asked.Select(text => int.Parse(text, CultureInfo.InvariantCulture))] : [10, 100, 1_000, 10_000, 100_000];
    QuickFigures.Print(sizes);
    return 0;
}
if (args is ["trees", var folder])
{
    // The same trees as layout documents, for solvers outside the project.
    Directory.CreateDirectory(folder);
    foreach (var points in (int[])[10, 100, 1_000, 10_000])
        File.WriteAllBytes(Path.Combine(folder, $"plain-{points}.json"), TreeDocument.Of(RandomTree.Plain(points, seed: points)));
    return 0;
}
Console.Error.WriteLine("usage: quick [points …] | trees <folder>");
return 2;
