using FlowCalc.Layouts;
using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Upkeep;

/// <summary>A service that makes no sense: every fault with its place and what would be right.</summary>
public class ServiceFaultTests
{
    [Theory]
    [InlineData("[]", "", "is an object with")]
    [InlineData("""{ "checked": "2026-01-01" }""", "/checked", "unknown field 'checked'")]
    [InlineData("""{ "manufactured": 2024 }""", "/manufactured", "ISO 8601")]
    [InlineData("""{ "manufactured": "2024" }""", "/manufactured", "ISO 8601")]
    [InlineData("""{ "manufactured": "03/2024" }""", "/manufactured", "ISO 8601")]
    [InlineData("""{ "manufactured": "2023-02-29" }""", "/manufactured", "ISO 8601")]
    [InlineData("""{ "manufactured": "2024-2-9" }""", "/manufactured", "ISO 8601")]
    [InlineData("""{ "manufactured": "1899-12-31" }""", "/manufactured", "1900 to 2999")]
    [InlineData("""{ "lastService": "2026-11-26" }""", "/lastService", "after the day that is asked for, 2026-11-25")]
    [InlineData("""{ "lastTest": "2026-12" }""", "/lastTest", "after the day that is asked for")]
    [InlineData("""{ "manufactured": "2024-05", "lastService": "2024-04-30" }""", "/lastService", "before the bottle was made, 2024-05")]
    [InlineData("""{ "manufactured": "2024-05-02", "lastTest": "2024-05-01" }""", "/lastTest", "before the bottle was made")]
    [InlineData("""{ "rules": [] }""", "/rules", "one entry a name")]
    [InlineData("""{ "rules": { "x": { "basis": "lastService" } } }""", "/rules/x/months", "missing")]
    [InlineData("""{ "rules": { "x": { "basis": "lastService", "months": 0 } } }""", "/rules/x/months", "1 to 1200")]
    [InlineData("""{ "rules": { "x": { "basis": "lastService", "months": 2.5 } } }""", "/rules/x/months", "a whole number")]
    [InlineData("""{ "rules": { "x": { "months": 12 } } }""", "/rules/x/basis", "missing")]
    [InlineData("""{ "rules": { "x": { "basis": "filled", "months": 12 } } }""", "/rules/x/basis", "manufactured, lastService, lastTest")]
    [InlineData("""{ "rules": { "x": { "basis": "lastTest", "from": "2026-01-01", "months": 12 } } }""", "/rules/x/basis", "from a date of its own")]
    [InlineData("""{ "rules": { "x": { "from": "2027-01-01", "months": 12 } } }""", "/rules/x/from", "after the day that is asked for")]
    [InlineData("""{ "weighing": { "stamped": "8 kg" } }""", "/weighing/gross", "missing")]
    [InlineData("""{ "weighing": { "gross": "8 kg" } }""", "/weighing/stamped", "emptyMass is not given")]
    [InlineData("""{ "weighing": { "stamped": "2 kg", "gross": "2 kg" } }""", "/weighing/stamped", "less than the fill alone, 3 kg")]
    [InlineData("""{ "weighing": { "stamped": "8 kg", "gross": "8 kg", "on": "2026-11-26" } }""", "/weighing/on", "after the day")]
    [InlineData("""{ "gauge": {} }""", "/gauge", "neither reading nor green")]
    [InlineData("""{ "gauge": { "reading": "13 bar" } }""", "/gauge/temperature", "missing")]
    [InlineData("""{ "gauge": { "green": ["12 bar", "16 bar"], "temperature": "20 °C" } }""", "/gauge/temperature", "nothing was read")]
    [InlineData("""{ "gauge": { "green": ["16 bar", "12 bar"] } }""", "/gauge/green", "the lower first")]
    [InlineData("""{ "gauge": { "green": ["16 bar"] } }""", "/gauge/green", "1 entries")]
    public void A_wrong_value_is_one_fault(string service, string pointer, string words)
    {
        var reading = Specimen.Read(Specimen.With(("/service", service)), new LayoutReaderOptions { Today = new DateOnly(2026, 11, 25) });

        var fault = Assert.Single(reading.Faults);
        Assert.Equal("/service" + pointer, fault.Pointer);
        Assert.Contains(words, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "gauge": { "green": ["12 bar", "16 bar"] } }""", "/service/gauge")]
    [InlineData("""{ "weighing": { "stamped": "8 kg", "gross": "8 kg" } }""", "/service/weighing")]
    public void A_supply_that_is_no_bottle_has_neither_gauge_nor_weight(string service, string pointer) =>
        Specimen.HasOneFault(Specimen.With(("/service", service), ("/supply", """{ "pressure": "12 bar" }""")), pointer, "no bottle");

    [Fact]
    public void The_day_itself_is_no_later_date_and_without_a_day_no_date_is_too_late()
    {
        Assert.Empty(Specimen.Read(Specimen.With(("/service", """{ "lastService": "2026-11-25", "lastTest": "2026-11" }""")), new LayoutReaderOptions { Today = new DateOnly(2026, 11, 25) }).Faults);
        Assert.Empty(Specimen.Read(Specimen.With(("/service", """{ "lastService": "2999-12-31" }"""))).Faults);
    }

    [Fact]
    public void A_whole_service_fits_the_schema_and_leaves_the_flow_alone()
    {
        var json = Specimen.With(("/service", """
            { "manufactured": "2024-02", "lastService": "2024-02-29", "lastTest": "2024-03-01", "rules": { "battery": { "from": "2026-01", "months": 12, "note": "n" } },
              "weighing": { "stamped": "8.42 kg", "gross": "8.4 kg", "step": "10 g", "on": "2026-10-01" }, "gauge": { "reading": "13 bar", "temperature": "6 °C", "green": ["12 bar", "16 bar"] }, "note": "n" }
            """));

        Assert.True(BuiltSchema.Accepts(json));
        Assert.Equal(Specimen.Read(Specimen.Json).Layout!.Assumptions.AsEnumerable(), Specimen.Read(json).Layout!.Assumptions);
        Assert.Null(Specimen.Read(Specimen.Json).Layout!.Service);
        Assert.Equal("2024-02", Specimen.Read(json).Layout!.Service!.Manufactured.ToString());
    }
}
