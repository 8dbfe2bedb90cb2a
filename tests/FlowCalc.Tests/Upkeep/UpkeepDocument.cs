using System.Globalization;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Tests.Layouts;
using FlowCalc.Upkeep;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Tests.Upkeep;

/// <summary>Documents with a service for the tests.</summary>
static class UpkeepDocument
{
    /// <summary>A day of the tests.</summary>
    public const string Day = "2026-11-25";

    public static DateOnly Date(string day) => DateOnly.ParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture);

    /// <summary>A document with a service, changed at places of the document, and read for a day.</summary>
    public static Layout Read(string service, string today = Day, params (string Pointer, string? Value)[] edits)
    {
        var reading = Specimen.Read(Specimen.With([("/service", service), .. edits]), new LayoutReaderOptions { Today = Date(today) });
        Assert.Empty(reading.Faults);
        return reading.Layout!;
    }

    public static UpkeepResult Solve(string service, string today = Day, double? celsius = null, params (string Pointer, string? Value)[] edits) =>
        UpkeepCalculation.Of(Read(service, today, edits), Date(today), celsius is { } degrees ? Temperature.FromDegreesCelsius(degrees) : null);

    public static UpkeepJudgement Judge(string service, string today = Day, double? celsius = null, params (string Pointer, string? Value)[] edits) =>
        UpkeepFindings.Judge(Read(service, today, edits), Solve(service, today, celsius, edits), UnitSystem.Metric);
}
