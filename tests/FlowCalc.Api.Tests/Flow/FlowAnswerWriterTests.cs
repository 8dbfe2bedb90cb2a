using System.Buffers;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Explanations;
using FlowCalc.Api.Flow;
using FlowCalc.Explanations;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Tests.Flow;

public sealed class FlowAnswerWriterTests
{
    [Theory]
    [InlineData(UnitSystem.Metric)]
    [InlineData(UnitSystem.Us)]
    [InlineData(UnitSystem.Si)]
    public void Straight_writing_gives_the_text_of_the_generated_serializer(UnitSystem units)
    {
        var cancel = TestContext.Current.CancellationToken;
        foreach (var document in (string[])[Documents.Demo, Documents.Small, Documents.Small.Replace("\"left\"", "\"lé\\\"ft µ\"", StringComparison.Ordinal)])
        {
            var layout = LayoutReader.Read(Encoding.UTF8.GetBytes(document), null, cancel).Layout!;
            var flow = SteadyFlow.Solve(layout, cancel);
            var answer = FlowAnswers.Of(layout, flow, FlowFindings.Judge(layout, flow, units, cancel), UnitWriter.Of(units));

            AssertSame(answer);
            AssertSame(answer with { Explanation = ExplanationAnswers.Of(FlowExplainer.Of(layout, flow, cancel), UnitWriter.Of(units)) });
        }
    }

    static void AssertSame(FlowAnswer answer)
    {
        var serialized = Serialized(answer);

        Assert.Equal(serialized, Straight(answer, size: 1 << 20));
        foreach (var size in (int[])[16, 300, 600, 2_000])
            Assert.Equal(serialized, Straight(answer, size));
    }

    static string Serialized(FlowAnswer answer)
    {
        var text = new ArrayBufferWriter<byte>();
        using (var writer = new Utf8JsonWriter(text, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping }))
            JsonSerializer.Serialize(writer, answer, AnswerJson.Default.FlowAnswer);
        return Encoding.UTF8.GetString(text.WrittenSpan);
    }

    static string Straight(FlowAnswer answer, int size)
    {
        var sent = new ArrayBufferWriter<byte>();
        using var text = new JsonText(sent, size);
        FlowAnswerWriter.Write(text, answer);
        return Encoding.UTF8.GetString([.. sent.WrittenSpan, .. text.Bytes.Span]);
    }
}
