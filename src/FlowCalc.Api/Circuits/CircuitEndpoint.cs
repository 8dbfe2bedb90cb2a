using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Circuits;
using FlowCalc.Findings;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Circuits;

/// <summary><c>POST /v1/circuit</c>: what a layout's firing circuit does.</summary>
internal static class CircuitEndpoint
{
    /// <summary>What a document without a circuit is told.</summary>
    public const string Missing = "missing: this call answers from circuit, the firing circuit: its source and its parts between named nodes";

    /// <summary>Puts the call on the service.</summary>
    public static void MapCircuit(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/circuit", AnswerAsync)
            .WithName("Circuit").WithTags("Flow")
            .WithSummary("Firing circuit of a layout")
            .DescribeCircuit();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits) =>
        LayoutCall.AnswerAsync<CircuitAnswer>(context, limits, new LayoutReaderOptions { MaximumPoints = limits.CircuitPoints }, limits.CircuitTime, Work,
            static (text, answer) => text.Value(answer, AnswerJson.Default.CircuitAnswer));

    static CircuitAnswer? Work(Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel)
    {
        fault = null;
        if (layout.Circuit is not { } circuit)
        {
            fault = Problems.Unread([new LayoutFault("/circuit", Missing)]);
            return null;
        }
        var result = CircuitAnalysis.Of(circuit, cancel);
        if (!result.IsFinite) throw new NotFiniteException("current of the source");
        return CircuitAnswers.Of(layout, circuit, result, CircuitFindings.Judge(layout, result, write.System, cancel), write);
    }
}
