using System.Reflection;
using FlowCalc.Findings;
using FlowCalc.Limits;

namespace FlowCalc.Tests.Findings;

public class FindingCodesTests
{
    [Fact]
    public void Every_code_stands_once_in_the_table_in_ordinal_order()
    {
        var constants = new[] { typeof(FindingCodes), typeof(MountCodes), typeof(CoverageCodes), typeof(CalibrationCodes) }.SelectMany(type => type.GetFields(BindingFlags.Public | BindingFlags.Static)).Where(field => field.IsLiteral).Select(field => (string)field.GetRawConstantValue()!);

        var codes = FindingCodes.All.Select(definition => definition.Code).ToArray();

        Assert.Equal(constants.Order(StringComparer.Ordinal), codes);
        Assert.Equal(codes.Length, codes.Distinct().Count());
    }

    [Fact]
    public void Codes_are_lower_case_words_with_hyphens() =>
        Assert.All(FindingCodes.All, definition => Assert.Matches("^[a-z]+(-[a-z]+)+$", definition.Code));

    [Fact]
    public void Every_code_says_when_how_bad_and_by_whose_rule()
    {
        Assert.All(FindingCodes.All, definition =>
        {
            Assert.EndsWith(".", definition.When, StringComparison.Ordinal);
            Assert.NotEmpty(definition.Severities);
            Assert.Equal(definition.Severities.Order(), definition.Severities);
            Assert.DoesNotContain(Severity.Pass, definition.Severities);
            Assert.NotEmpty(definition.Source);
        });
    }

    [Fact]
    public void Every_limit_belongs_to_a_code_and_has_a_step_for_each_of_its_severities()
    {
        Assert.All(DefaultLimits.All, limit =>
        {
            var definition = Assert.Single(FindingCodes.All, definition => definition.Code == limit.Code);
            List<Severity> steps = [];
            if (limit.Note is not null) steps.Add(Severity.Note);
            if (limit.Warn is not null) steps.Add(Severity.Warn);
            if (limit.Fail is not null) steps.Add(Severity.Fail);
            // A refusal counts as a failure.
            else if (limit.Refuse is not null) steps.Add(Severity.Fail);
            // What a document says besides its limits makes this one harder.
            if (limit.Code == FindingCodes.BottleBlindWhenInverted) steps.Add(Severity.Fail);
            Assert.Equal(steps, definition.Severities);
        });
    }
}
