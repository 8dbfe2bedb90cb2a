using System.Globalization;
using BenchmarkDotNet.Running;

namespace FlowCalc.Benchmarks;

/// <summary>What the program does for its arguments.</summary>
internal static class Commands
{
    const int FewFlows = 5_000;

    static readonly int[] Sizes = [10, 100, 1_000, 10_000, 100_000];

    static async Task<int> Main(string[] args)
    {
        switch (args)
        {
            case ["quick" or "smoke", .. var asked]:
                QuickFigures.IsBrief = args[0] == "smoke";
                int[] sizes = asked.Length > 0 ? [.. asked.Select(text => int.Parse(text, CultureInfo.InvariantCulture))] : Sizes;
                QuickFigures.Print(sizes);
                DischargeFigures.Print();
                ExpandingFigures.Print();
                StudyFigures.Print();
                ToleranceFigures.Print();
                CutListFigures.Print();
                DrawingFigures.Print();
                ReportFigures.Print();
                MountFigures.Print();
                UpkeepFigures.Print();
                CheckFigures.Print();
                CoverageFigures.Print();
                CalibrationFigures.Print();
                await RequestFigures.PrintAsync(sizes);
                await ServiceFigures.PrintAsync(FewFlows);
                return 0;
            case ["discharge"]:
                DischargeFigures.Print();
                ExpandingFigures.Print();
                return 0;
            case ["studies"]:
                StudyFigures.Print();
                ToleranceFigures.Print();
                return 0;
            case ["drawing"]:
                DrawingFigures.Print();
                return 0;
            case ["report"]:
                ReportFigures.Print();
                return 0;
            case ["cut-list"]:
                CutListFigures.Print();
                return 0;
            case ["mount"]:
                MountFigures.Print();
                return 0;
            case ["check"]:
                CheckFigures.Print();
                return 0;
            case ["upkeep"]:
                UpkeepFigures.Print();
                return 0;
            case ["coverage"]:
                CoverageFigures.Print();
                return 0;
            case ["calibrate"]:
                CalibrationFigures.Print();
                return 0;
            case ["service", .. var asked]:
                await RequestFigures.PrintAsync([10]);
                await ServiceFigures.PrintAsync(asked is [var many] ? int.Parse(many, CultureInfo.InvariantCulture) : FewFlows);
                return 0;
            case ["trees", var folder]:
                // The same trees as layout documents, for solvers outside the project.
                Directory.CreateDirectory(folder);
                foreach (var points in Sizes[..^1])
                    await File.WriteAllBytesAsync(Path.Combine(folder, $"plain-{points}.json"), TreeDocument.Of(RandomTree.Plain(points, seed: points)));
                return 0;
            case []:
                await Console.Error.WriteLineAsync("usage: quick [points …] | smoke [points …] | discharge | studies | cut-list | drawing | report | mount | upkeep | check | coverage | calibrate | service [flows] | trees <folder> | arguments of BenchmarkDotNet");
                return 2;
            default:
                BenchmarkSwitcher.FromAssembly(typeof(Commands).Assembly).Run(args);
                return 0;
        }
    }
}
