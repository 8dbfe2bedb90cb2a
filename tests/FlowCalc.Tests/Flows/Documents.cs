using System.Text;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Flows;

/// <summary>Small documents for tests, read and solved whole.</summary>
internal static class Documents
{
    public static Layout Read(string json)
    {
        var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(json), cancellationToken: TestContext.Current.CancellationToken);
        Assert.Empty(reading.Faults);
        return reading.Layout!;
    }

    public static FlowResult Solve(string json)
    {
        var result = SteadyFlow.Solve(Read(json), TestContext.Current.CancellationToken);
        Assert.True(result.Report.Converged, result.Report.Failure);
        return result;
    }

    /// <summary>A document with water at 20 °C and a held supply of 10 bar.</summary>
    public static string Water(string points, string runs, string more = "", string pressure = "10 bar") => $$"""
        { "format": 1, "agent": "water", "temperature": "20 °C", "supply": { "pressure": "{{pressure}}" }, {{more}}
          "points": [ { "id": "S", "kind": "supply" }, {{points}} ],
          "runs": [ {{runs}} ] }
        """;
}
