using FlowCalc.Api.Circuits;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Upkeep;
using Microsoft.OpenApi;

namespace FlowCalc.Api.Documentation;

/// <summary>What the contract says of the calls on a firing circuit and on the upkeep of a bottle.</summary>
internal static class CircuitDescriptions
{
    const string Ics = "text/calendar";

    const string IcsExample = "BEGIN:VCALENDAR\r\nPRODID:-//FlowCalc//Upkeep//EN\r\nVERSION:2.0\r\nBEGIN:VEVENT\r\nDTSTAMP:20261125T000000Z\r\nDTSTART;VALUE=DATE:20280502\r\nSUMMARY:service due\r\nUID:00112233445566778899aabbccddeeff@flowcalc\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n";

    /// <summary>Describes <c>POST /v1/circuit</c>.</summary>
    public static void DescribeCircuit(this RouteHandlerBuilder call) => call
        .Produces<CircuitAnswer>(200, CallDescriptions.Json)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document with `circuit`, its firing circuit, and answers what that does: the state table of off, test and armed with every push; of each push for firing the current, voltage and margin at every actuator and where the rest is lost; the largest current that an actuator can get where nothing is meant to fire, against the least of a tenth of its no-fire current and 50 mA; fuses; of a capacitor its energy and how long it lasts; and every single fault (a part open, a node touching the chassis, a contact corroded), whether it keeps something from firing or fires it, and whether a lamp shows it. Firing currents are those of the source at its weakest, test currents those of the source at its strongest.

                The circuit is solved as a network of resistances between nodes, whatever its shape. Diodes have a forward voltage and a resistance; nothing warms up, and coils and wires have no inductance. The document without `circuit` is a 422. No flow is solved.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.CircuitPoints} points, 60 parts of the circuit, and {limits.CircuitTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("circuit"), "The circuit; the example shows the first two entries of every list.");
            return Task.CompletedTask;
        });

    /// <summary>Describes <c>POST /v1/upkeep</c>.</summary>
    public static void DescribeUpkeep(this RouteHandlerBuilder call) => call
        .Produces<UpkeepAnswer>(200, CallDescriptions.Json, Ics)
        .ProducesFaults(400, 413, 415, 422, 429)
        .AddOpenApiOperationTransformer((operation, context, _) =>
        {
            var limits = context.ApplicationServices.GetRequiredService<ServiceLimits>();
            CallDescriptions.DescribeLayoutCall(operation, FormattableString.Invariant(
                $"""
                Takes a layout document with `service`, the dates, rules, weighing and gauge of its bottle, and answers for the day `today`, which the request gives and no clock: when service, pressure test and whatever the document has rules for fall due, what is overdue or near, what the weighing says of the agent, what a sound bottle's gauge shows at `temperature` and what a reading of it says. Intervals are whole calendar months, the due day itself is still good, a month without a day counts as its first. Where the document states no rule of that name, usual ones hold and are listed as assumptions. A date after `today` is a fault. The document without `service` is a 422. No flow is solved.

                As a calendar (RFC 5545) every due day is an event of a whole day; the same document on the same day gives the same file.

                Limits: a body of at most {limits.BodyBytes} bytes, at most {limits.UpkeepPoints} points, and {limits.UpkeepTime.TotalSeconds} s from when its work begins. {CallDescriptions.NoReplacement}
                """));
            CallDescriptions.AddText(operation, UpkeepQuery.TodayName, "2026-11-25", "The day for which the dates are judged, ISO 8601. Required.", isRequired: true);
            CallDescriptions.AddText(operation, UpkeepQuery.TemperatureName, "5 °C", "Temperature of the bottle, with its unit, at which the gauge is to be told; it is not where left out.", isRequired: false);
            CallDescriptions.AddChoice(operation, UpkeepQuery.FormatName, UpkeepQuery.Formats, "How to write the answer.");
            CallDescriptions.SetExample(operation, "200", CallDescriptions.Json, ContractExamples.Answer("upkeep"), "The upkeep; the example shows the first two entries of every list.");
            if (operation.Responses?.GetValueOrDefault("200")?.Content?.TryGetValue(Ics, out var calendar) == true)
                (calendar.Schema, calendar.Example) = (new OpenApiSchema { Type = JsonSchemaType.String }, IcsExample);
            return Task.CompletedTask;
        });
}
