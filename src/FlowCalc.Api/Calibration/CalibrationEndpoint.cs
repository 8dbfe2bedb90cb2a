using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Calibration;
using FlowCalc.Findings;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Calibration;

/// <summary><c>POST /v1/calibrate</c>: what the readings of a test say of the system that was built.</summary>
internal static class CalibrationEndpoint
{
    /// <summary>What a document without a test is told.</summary>
    public const string Missing = "missing: this call answers from measured, what a test of the built system showed: flows or what was collected by nozzle, pressures, or the time of a discharge";

    /// <summary>Puts the call on the service.</summary>
    public static void MapCalibration(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/calibrate", AnswerAsync)
            .WithName("Calibrate").WithTags("Flow")
            .WithSummary("What a test says of the system as built")
            .DescribeCalibration();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits) =>
        LayoutCall.AnswerAsync<CalibrationAnswer>(context, limits, new LayoutReaderOptions { MaximumPoints = limits.CalibrationPoints }, limits.CalibrationTime, Work,
            static (text, answer) => text.Value(answer, AnswerJson.Default.CalibrationAnswer));

    static CalibrationAnswer? Work(Layout layout, UnitWriter write, out Problem? fault, CancellationToken cancel)
    {
        fault = layout.Measured is null ? Problems.Unread([new LayoutFault("/measured", Missing)]) : null;
        if (fault is not null) return null;
        var result = LayoutCalibration.Of(layout, cancel);
        fault = result.Failure is { } failure ? Problems.NoAnswer(failure) : null;
        return fault is null ? CalibrationAnswers.Of(layout, result, CalibrationFindings.Judge(layout, result, write.System, cancel), write) : null;
    }
}
