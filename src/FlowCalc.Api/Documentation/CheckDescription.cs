using FlowCalc.Api.Checks;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Upkeep;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the call on everything at once.</summary>
internal static class CheckDescription
{
    /// <summary>Describes <c>POST /v1/check</c>.</summary>
    public static void DescribeCheck(this RouteHandlerBuilder call) => call
        .Produces<CheckAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document and answers everything that it has data for: flow and cut list always, the discharge where the supply is a bottle, coverage where it has zones or `coverage`, and mount, circuit, upkeep and calibration where it has `mount`, `circuit`, `service` and `measured`. Each part is what its own call answers; the verdict is the worst of them, and the findings of all stand together, worst first. A part without data is listed with what it would take, and is no fault; one that fails counts as `fail` and keeps no other from its answer.

                Dates are judged for the day `today`, which the request gives and no clock; without it the upkeep is not answered.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.CheckPoints} points, {limits.CheckParts} runs, bends, fittings, clips and hot places together, and {limits.CheckTime.TotalSeconds} s from when its work begins; besides, those of the calls on the single parts. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.AddText(operation, UpkeepQuery.TodayName, "2026-11-25", "The day for which the dates are judged, ISO 8601; without it they are not.", isRequired: false);
            CallDescriptions.AddText(operation, UpkeepQuery.TemperatureName, "5 °C", "Temperature of the bottle, with its unit, at which the gauge is to be told; it is not where left out.", isRequired: false);
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("check"), "The check; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });
}
