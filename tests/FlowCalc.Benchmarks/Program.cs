using System.Globalization;
using FlowCalc.Benchmarks;

if (args is ["quick", .. var asked])
{
    int[] sizes = asked.Length > 0 ? [.. asked.Select(text => int.Parse(text, CultureInfo.InvariantCulture))] : [10, 100, 1_000, 10_000, 100_000];
    QuickFigures.Print(sizes);
    return 0;
}
Console.Error.WriteLine("usage: quick [points …]");
return 2;
