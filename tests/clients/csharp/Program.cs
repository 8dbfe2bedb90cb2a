using System.Text.Json.Nodes;
using FlowCalc.Client;
using FlowCalc.Client.Models;
using FlowCalc.Client.Models.Layout;
using FlowCalc.Client.Models.Study;
using FlowCalc.CSharpClient;
using Microsoft.Kiota.Abstractions.Authentication;
using Microsoft.Kiota.Abstractions.Serialization;
using Microsoft.Kiota.Http.HttpClientLibrary;

// Calls a running FlowCalc through types that are generated from its contract, and checks what comes back.
// Ends with "N passed, N failed".
const double shareSumTolerance = 1e-9; // Shares are written in full; their sum is off by rounding alone.

if (args is not [var address])
{
    Console.Error.WriteLine("usage: CSharpClient <address of a running service>");
    return 2;
}
using var http = new HttpClient { BaseAddress = new Uri(address), Timeout = TimeSpan.FromSeconds(60) };
using var adapter = new HttpClientRequestAdapter(new AnonymousAuthenticationProvider(), httpClient: http) { BaseUrl = address };
var service = new FlowCalcClient(adapter);
var checks = new Checks();

var layout = await service.V1.Examples["raid-pickup"].GetAsync() ?? new LayoutDocument();
var nozzles = (layout.Points ?? []).Where(point => point.Kind == Point_kind.Nozzle).Select(point => point.Id).Order().ToArray();
checks.Check("an example is given", nozzles.Length > 0, layout.Title);
var sent = await http.GetStringAsync("/v1/examples/raid-pickup");
var kept = await KiotaJsonSerializer.SerializeAsStringAsync(layout);
checks.Check("the types lose nothing of the example", JsonNode.DeepEquals(JsonNode.Parse(sent), JsonNode.Parse(kept)), kept);

var flow = await service.V1.Flow.PostAsync(layout);
var answered = (flow?.Nozzles ?? []).Select(nozzle => nozzle.Id).Order().ToArray();
checks.Check("every nozzle is answered", answered.SequenceEqual(nozzles), string.Join(", ", answered));
var total = (flow?.Nozzles ?? []).Sum(nozzle => nozzle.Share ?? double.NaN);
checks.Check("shares add up to 1", Math.Abs(total - 1) <= shareSumTolerance, total);
// A word that the contract does not have is read as none.
checks.Check("the flow's verdict is a word of the contract", flow?.Verdict is not null, flow?.Verdict);

var whole = await service.V1.Check.PostAsync(layout, call => call.QueryParameters.Today = "2026-11-25");
checks.Check("the check's verdict is a word of the contract", whole?.Verdict is not null, whole?.Verdict);

var variant = new Variant { Name = "feed in R11", Set = new Variant_set { AdditionalData = { ["runs/R11/tube"] = "feed" } } };
var compared = await service.V1.Compare.PostAsync(new Comparison { Layout = layout, Variants = [variant] });
var answers = compared?.Answers ?? [];
checks.Check("the layout and its variant are compared", answers.Count == 2, answers.Count);
checks.Check("verdicts of the comparison are words of the contract", answers.All(answer => answer.Verdict is not null), string.Join(", ", answers.Select(answer => answer.Verdict)));

if (layout.Runs is [var first, ..]) first.From = "nowhere";
try
{
    await service.V1.Flow.PostAsync(layout);
    checks.Check("a run from nowhere is refused", false, "an answer");
}
catch (Problem problem)
{
    checks.Check("a run from nowhere is refused", problem.ResponseStatusCode == 422 && problem.Status == 422, problem.ResponseStatusCode);
    checks.Check("the fault points at the run", problem.Errors?.AdditionalData.ContainsKey("/runs/0/from") == true, problem.Detail);
}
return checks.Sum();
