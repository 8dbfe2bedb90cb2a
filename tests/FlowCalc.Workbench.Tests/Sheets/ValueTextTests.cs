using CsCheck;
using FlowCalc.Workbench.Fields;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class ValueTextTests
{
    [Theory]
    [InlineData(ValueForm.Text)]
    [InlineData(ValueForm.Number)]
    [InlineData(ValueForm.List)]
    [InlineData(ValueForm.Lines)]
    [InlineData(ValueForm.Json)]
    public void What_was_typed_is_shown_to_the_letter(ValueForm form) => Typed.Sample(text =>
        ValueText.Of(With(text, form), "/field", form, text) == text, iter: 1_000);

    [Theory]
    [InlineData(ValueForm.Text)]
    [InlineData(ValueForm.Number)]
    [InlineData(ValueForm.List)]
    [InlineData(ValueForm.Lines)]
    [InlineData(ValueForm.Json)]
    public void What_a_field_shows_of_a_document_gives_the_same_value_when_it_is_typed(ValueForm form) => Typed.Sample(text =>
    {
        var sheet = With(text, form);
        var shown = ValueText.Of(sheet, "/field", form);
        return ValueText.Of(With(shown, form), "/field", form) == shown && System.Text.Json.Nodes.JsonNode.DeepEquals(sheet.At("/field"), With(shown, form).At("/field"));
    }, iter: 1_000);

    [Theory]
    [InlineData("0.50", "0.50")]
    [InlineData("1e-3", "1e-3")]
    [InlineData("1,5", "\"1,5\"")]
    [InlineData("true", "\"true\"")]
    [InlineData(".5", "\".5\"")]
    public void Number_stands_as_it_was_typed_and_what_is_none_as_text(string typed, string json) => Assert.Equal(json, ValueText.Read(typed, ValueForm.Number)!.ToJsonString());

    [Theory]
    [InlineData("1 m,2 m", """["1 m","2 m"]""")]
    [InlineData("1 m, 2 m,", """["1 m","2 m",""]""")]
    public void List_is_parted_at_its_commas(string typed, string json) => Assert.Equal(json, ValueText.Read(typed, ValueForm.List)!.ToJsonString());

    [Fact]
    public void What_another_change_has_put_there_is_shown_in_place_of_what_was_typed() =>
        Assert.Equal("3 mm", ValueText.Of(With("3 mm", ValueForm.Text), "/field", ValueForm.Text, "2 mm"));

    static Gen<string> Typed => Gen.OneOf(Gen.String[Gen.Char["0123456789.,eE+- m°"], 0, 12], Gen.String[Gen.Char["1,2 \n[]{}\":mtruefalsn"], 0, 12]);

    static Sheet With(string text, ValueForm form) => Sheet.Of("{}", TestContext.Current.CancellationToken).With(root =>
    {
        if (ValueText.Read(text, form) is { } value) root["field"] = value;
    });
}
