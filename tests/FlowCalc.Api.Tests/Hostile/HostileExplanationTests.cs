using System.Text.Json;
using FlowCalc.Api.Tests.Explanations;
using FlowCalc.Api.Tests.Hosting;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Whatever a document holds, each step of the explanation of its answer is right by itself.</summary>
public sealed class HostileExplanationTests
{
    [Fact]
    public async Task Every_step_of_the_flow_of_a_hostile_document_is_redone() => await Check("/v1/flow", HostileDocuments.Of, 1_500);

    [Fact]
    public async Task Every_step_of_the_flow_of_a_hostile_document_of_a_gas_is_redone() => await Check("/v1/flow", HostileDocuments.OfGas, 500);

    [Fact]
    public async Task Every_step_of_the_discharge_of_a_hostile_document_is_redone() => await Check("/v1/discharge", HostileDocuments.OnBottle, 300);

    [Fact]
    public async Task Every_step_of_the_discharge_of_a_hostile_document_of_a_gas_is_redone() => await Check("/v1/discharge", HostileDocuments.OfGasBottle, 100);

    [Fact]
    public async Task Every_step_of_the_cut_list_of_a_hostile_document_is_redone() => await Check("/v1/cut-list", HostileDocuments.Of, 1_000);

    static async Task Check(string path, Func<int, byte[]> documentOf, int usual)
    {
        var count = HostileCalls.IsLong ? 10 * usual : usual;
        await using var service = Service.With(("Limits:FlowTime", "00:00:20"), ("Limits:DischargeTime", "00:01:00"));
        var calls = new HostileCalls(path, documentOf, explains: true);

        await calls.SendAsync(service, HostileCalls.FirstSeed, count, (_, _, answer) => Wrong(answer));

        calls.AssertRight(count);
    }

    static string? Wrong(JsonElement answer)
    {
        try
        {
            ToldSteps.Redo(answer.GetProperty("explanation"));
            return null;
        }
        catch (Xunit.Sdk.XunitException wrong)
        {
            return wrong.Message;
        }
    }
}
