using System.Reflection;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Tests.Layouts;

/// <summary>What the reader refuses, held against the schema.</summary>
public class SchemaAndReaderTests
{
    // Names that must exist, sums, what another part of the document decides, and the data of agents: no schema says these.
    static readonly string[] BeyondASchema =
    [
        "a direction along normal", "z counts from the face", "missing: the mass of the full bottle", "no lighter than its fill", "two bolts cannot be at one place", "less than their diameter", "wider than its hole", "itself reaches",
        "over the proof load", "yields before it breaks", "what bears on the sheet", "would lie on it", "has a stop already", "another entry has that name already",
        "half the bore", "missing: the developed length", "leaves a bore", "did you mean", "no mixture of", "outside the data", "freezes at", "The data of", "use an absolute unit", "over the ambient pressure", "under the ambient pressure",
        "leave no room", "another case has that temperature already", "outside the bottle", "differs by over 5 %", "a direction of no length", "comes first", "add up to", "is named 'main' already", "is named 'step-first' already", "has that name already", "has that id already",
        "no nozzle names it", "out of order", "whose points have places", "over the run's length", "m here", "another run leaves", "no tube of the document", "a second stock without tube", "has a stock already", "stand in their order", "ends after it begins", "is a reducer", "is a tee fed", "over 5 % of this bore", "-1 m/s\": what it measures", "\\u00B0\": what it measures",
    ];

    // Sizes inside a text; those of bare numbers the schema does state.
    static readonly string[] Ranges = [.. typeof(Sizes).GetFields(BindingFlags.Static | BindingFlags.Public).Select(field => field.GetValue(null)).OfType<SizeRange>().Select(range => $"{range.What} is {range.Words}")];

    /// <summary>Every row of the tests of single faults.</summary>
    public static TheoryData<string, string?, string> Rows
    {
        get
        {
            var rows = new TheoryData<string, string?, string>();
            foreach (var (type, method, prefix) in ((Type, string, string)[])
                [(typeof(DocumentFaultTests), nameof(DocumentFaultTests.A_wrong_field_is_one_fault), ""), (typeof(BottleFaultTests), nameof(BottleFaultTests.A_wrong_bottle_is_one_fault), "/supply/bottle"),
                 (typeof(StockFaultTests), nameof(StockFaultTests.A_wrong_entry_is_one_fault), ""), (typeof(PointAndRunFaultTests), nameof(PointAndRunFaultTests.A_wrong_point_or_run_is_one_fault), ""),
                 (typeof(FittingFaultTests), nameof(FittingFaultTests.A_wrong_fitting_is_one_fault), ""), (typeof(CuttingFaultTests), nameof(CuttingFaultTests.A_wrong_figure_of_the_bench_is_one_fault), ""),
                 (typeof(MountFaultTests), nameof(MountFaultTests.A_wrong_figure_of_the_mount_is_one_fault), "")])
                foreach (var row in type.GetMethod(method)!.GetCustomAttributes<InlineDataAttribute>())
                    rows.Add(prefix + (string)row.Data[0]!, (string?)row.Data[1], (string)row.Data[3]!);
            return rows;
        }
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_fault_that_a_schema_can_express_is_refused_by_both(string edit, string? value, string words)
    {
        // A part of a mount is spoilt in a mount, which the specimen has none of.
        var json = edit.StartsWith("/mount", StringComparison.Ordinal) ? Specimen.With(("/mount", MountFaultTests.Sound), (edit, value)) : Specimen.With((edit, value));
        var message = Assert.Single(Specimen.Read(json).Faults).Message;

        var accepts = BuiltSchema.Accepts(json);

        Assert.True(!accepts || BeyondASchema.Concat(Ranges).Any(reason => message.Contains(reason, StringComparison.Ordinal)), $"the schema accepts what the reader refuses: {message} ({words})");
    }
}
