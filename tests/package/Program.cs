using System.Globalization;
using FlowCalc.Discharge;
using FlowCalc.Examples;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;

// Solves the demo by the package alone. Ends with 1 where a flow or a discharge fails or its shares do not add up to one.
const double SumOfShares = 1e-9;

CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
var faults = new List<string>();

var document = ExampleCatalogue.Find("raid-pickup") ?? throw new InvalidDataException("The demo is not in the package.");
var reading = LayoutReader.Read(document);
if (reading.Layout is not { } layout)
{
    foreach (var fault in reading.Faults) Console.Error.WriteLine(fault);
    return 1;
}

Console.WriteLine(layout.Title);
var flow = SteadyFlow.Solve(layout);
if (!flow.Report.Converged) faults.Add($"the flow: {flow.Report.Failure}");
foreach (var nozzle in flow.Nozzles)
    Console.WriteLine($"  {layout.Points[nozzle.Point].Id,-12} {(nozzle.Pressure - layout.AmbientPressure).Bars,7:F3} bar(g) {nozzle.VolumeFlow.LitersPerMinute,7:F3} L/min {nozzle.Share,8:P2}");
Judge("the flow", flow.Nozzles.Select(nozzle => nozzle.Share));

var discharge = LayoutDischarge.Solve(layout);
foreach (var one in discharge.Cases)
{
    var name = $"{one.Temperature.DegreesCelsius:F0} °C, {one.Attitude.Name}";
    if (one.Failure is { } failure)
    {
        faults.Add($"{name}: {failure.Message}");
        continue;
    }
    Console.WriteLine($"  {name,-26} 95 % out after {one.Time95?.Seconds:F2} s ({one.Band?.Time95.Low?.Seconds:F2} to {one.Band?.Time95.High?.Seconds:F2} s)");
    if (one.Time95 is null || one.Band is null) faults.Add($"{name}: no time, or no band");
    Judge(name, one.Nozzles.Select(nozzle => nozzle.Share));
}
if (discharge.Cases.IsEmpty) faults.Add("the discharge has no case");

foreach (var caution in Cautions.For(layout)) Console.WriteLine($"! {caution}");
foreach (var fault in faults) Console.Error.WriteLine($"FAIL {fault}");
return faults.Count == 0 ? 0 : 1;

void Judge(string name, IEnumerable<double> shares)
{
    var sum = shares.Sum();
    if (!(Math.Abs(sum - 1) <= SumOfShares)) faults.Add($"{name}: shares add up to {sum:R}");
}
