using FlowCalc.ReferenceData;

namespace FlowCalc.Tests.ReferenceData;

public class CsvTableTests
{
    [Fact]
    public void A_table_reads_plain_quoted_and_empty_fields()
    {
        var table = CsvTable.Parse("t", "id,length_m,note,source\na,1.5,\"one, \"\"two\"\"\",x;y\nb,,,\n");

        Assert.Equal(["id", "length_m", "note", "source"], table.Columns);
        Assert.Equal(1.5, table.Rows[0].Number("length_m"));
        Assert.Equal("one, \"two\"", table.Rows[0].Text("note"));
        Assert.Equal(["x", "y"], table.Rows[0].Sources);
        Assert.Null(table.Rows[1].OptionalNumber("length_m"));
        Assert.Null(table.Rows[1].OptionalText("note"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("a,b\n")]
    [InlineData("a,b\n1\n")]
    [InlineData("a,b\n1,2,3\n")]
    [InlineData("a,b\n1,2")]
    [InlineData("a,b\n1,\"2\"")]
    [InlineData("a,b\n1,")]
    [InlineData("a,b\n\n1,2\n")]
    [InlineData("a,a\n1,2\n")]
    [InlineData("a,\n1,2\n")]
    [InlineData("a,b\r\n1,2\r\n")]
    [InlineData("a,b\n1,2\"3\"\n")]
    [InlineData("a,b\n1,\"2\n")]
    [InlineData("a,b\n1,\"2\"3\n")]
    public void A_table_refuses_text_that_is_not_strict(string text) =>
        Assert.Throws<InvalidDataException>(() => CsvTable.Parse("t", text));

    [Theory]
    [InlineData("1.5", 1.5)]
    [InlineData("-2e-3", -0.002)]
    [InlineData("0", 0)]
    public void A_row_reads_invariant_numbers(string text, double expected) =>
        Assert.Equal(expected, Row(text).Number("n"));

    [Theory]
    [InlineData("1 500")]
    [InlineData("\"1,5\"")]
    [InlineData("NaN")]
    [InlineData("Infinity")]
    [InlineData("1e999")]
    [InlineData(" 1")]
    [InlineData("\"\"")]
    public void A_row_refuses_what_is_not_a_number(string text) =>
        Assert.Throws<InvalidDataException>(() => Row(text).Number("n"));

    [Fact]
    public void A_row_refuses_a_column_that_is_not_there() =>
        Assert.Throws<InvalidDataException>(() => Row("1").Text("m"));

    [Fact]
    public void The_library_refuses_a_table_that_it_does_not_hold() =>
        Assert.Throws<InvalidDataException>(() => CsvTable.Embedded("no/such.csv"));

    static CsvRow Row(string number) => CsvTable.Parse("t", $"id,n\na,{number}\n").Rows[0];
}
