using System.Text;
using System.Text.Json;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;
using FlowCalc.Examples;

namespace FlowCalc.Api.Tests.Explanations;

public sealed class ExplainedFlowTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    public void Dispose() => caller.Dispose();

    static string Example(string name) => Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span);

    async Task<string> Text(string document, string query)
    {
        using var response = await caller.PostFlow(document, query);
        return await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Explained_answer_is_the_plain_one_with_its_explanation_behind(string name)
    {
        var plain = await Text(Example(name), "");

        Assert.Equal(plain, await Text(Example(name), "?explain=false"));
        Assert.DoesNotContain("\"explanation\"", plain, StringComparison.Ordinal);
        Assert.StartsWith(plain[..^1] + ",\"explanation\":{\"equations\":[", await Text(Example(name), "?explain=true"), StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Every_step_is_redone_from_the_answer_alone_in_every_system_of_units(string name)
    {
        foreach (var units in (string[])["metric", "us", "si"])
        {
            var answer = await caller.PostFlow(Example(name), $"?explain=true&units={units}").Json(200);

            ToldSteps.Redo(answer.GetProperty("explanation"));
        }
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public async Task Steps_add_up_to_the_losses_and_pressures_of_the_answer(string name)
    {
        var answer = await caller.PostFlow(Example(name), "?explain=true").Json(200);
        var steps = ToldSteps.Of(answer.GetProperty("explanation"));

        foreach (var run in answer.GetProperty("runs").EnumerateArray())
        {
            var own = steps.Where(step => step.Word("place") == "run" && step.Word("id") == run.Word("id")).ToArray();
            foreach (var loss in run.GetProperty("losses").EnumerateObject())
                Assert.Equal(loss.Value.Si(), own.Where(step => step.Word("countsAs") == loss.Name).Sum(step => step.GetProperty("result").Si()), tolerance: 1e-2);
            Assert.Equal(run.GetProperty("pressureOut").Si(), own.Single(step => step.Word("equation") == "end-pressure").GetProperty("result").Si(), tolerance: 1e-2);
        }
        foreach (var nozzle in answer.GetProperty("nozzles").EnumerateArray())
        {
            var own = steps.Where(step => step.Word("place") == "point" && step.Word("id") == nozzle.Word("id")).ToArray();
            var flow = nozzle.GetProperty("massFlow").Value();
            Assert.Equal(flow, own.Single(step => step.Word("part") == "flow").GetProperty("result").Value(), tolerance: 1e-7 * flow);
            Assert.Equal(
                nozzle.GetProperty("losses").EnumerateObject().Sum(loss => loss.Value.Si()), own.Single(step => step.Word("equation") == "drop-of-path").GetProperty("result").Si(), tolerance: 1e-1);
        }
    }

    [Fact]
    public async Task Every_kind_of_loss_that_an_example_has_is_explained()
    {
        HashSet<string> seen = [];
        foreach (var name in ExampleCatalogue.All.Select(example => example.Name))
        {
            var answer = await caller.PostFlow(Example(name), "?explain=true").Json(200);
            var explained = ToldSteps.Of(answer.GetProperty("explanation")).Select(step => step.Word("countsAs")).OfType<string>().ToHashSet();
            var lost = answer.GetProperty("nozzles").EnumerateArray().SelectMany(nozzle => nozzle.GetProperty("losses").EnumerateObject())
                .Where(loss => loss.Value.Value() != 0).Select(loss => loss.Name).ToHashSet();

            Assert.Subset(explained, lost);
            seen.UnionWith(lost);
        }
        Assert.Equal(["bends", "boreChanges", "fittings", "outlet", "rise", "tees", "tube"], seen.Order(StringComparer.Ordinal));
    }

    [Fact]
    public async Task Every_law_has_its_source_its_range_and_its_symbols()
    {
        var answer = await caller.PostFlow(Documents.Demo, "?explain=true").Json(200);

        var equations = answer.GetProperty("explanation").GetProperty("equations").EnumerateArray().ToArray();
        foreach (var id in (string[])["friction-turbulent", "tube-friction", "bend-turbulent", "curved-tube-friction", "tee-run", "tee-branch", "tee-bullhead", "kv-loss", "rise", "nozzle-flow", "mass-balance"])
            Assert.Contains(equations, equation => equation.Word("id") == id);
        Assert.All(equations, equation =>
        {
            Assert.NotEmpty(equation.Word("source")!);
            Assert.NotEmpty(equation.Word("range")!);
            Assert.NotEmpty(equation.GetProperty("symbols").EnumerateArray());
        });
        Assert.Contains("Colebrook", equations.Single(equation => equation.Word("id") == "friction-turbulent").Word("source")!, StringComparison.Ordinal);
        Assert.NotEmpty(answer.GetProperty("explanation").GetProperty("leftOut").EnumerateArray());
    }

    [Fact]
    public async Task States_of_a_gas_come_with_it_from_the_highest_pressure_down_and_of_a_liquid_none()
    {
        var gas = (await caller.PostFlow(Example("cabinet-inert-gas"), "?explain=true").Json(200)).GetProperty("explanation").GetProperty("states").EnumerateArray().ToArray();
        var liquid = (await caller.PostFlow(Documents.Small, "?explain=true").Json(200)).GetProperty("explanation").GetProperty("states");

        Assert.Equal(JsonValueKind.Array, liquid.ValueKind);
        Assert.Equal(0, liquid.GetArrayLength());
        var pressures = gas.Select(state => state.GetProperty("pressure").Value()).ToArray();
        Assert.Equal(pressures.OrderDescending(), pressures);
        Assert.All(gas, state => Assert.Equal("bara", state.GetProperty("pressure").Word("unit")));
        Assert.Equal(0, gas[^1].GetProperty("potential").Value(), tolerance: 1e-9);
    }
}
