using CsCheck;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Networks;
using FlowCalc.Tests.Flows;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>How far a discharge may be off for its steps, and that every instant of it is a steady flow.</summary>
public class DischargeErrorTests
{
    const string Bottle = """{ "volume": "4 L", "fill": "2.6 kg", "chargePressure": "14 bar" }""";

    [Fact]
    public void Finer_steps_move_the_times_by_less_than_is_stated() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed =>
        {
            var problem = Problem(seed);
            var usual = DischargeRun.Of(problem, CancellationToken.None);
            foreach (var finer in (ReadOnlySpan<double>)[0.5, 0.1, 0.01])
            {
                var other = DischargeRun.Of(problem with { Tolerance = finer * problem.Tolerance }, CancellationToken.None);
                Assert.Equal(usual.Thresholds[0], other.Thresholds[0], tolerance: 1e-4 * other.Thresholds[0]);
                for (var i = 0; i < usual.Delivered.Length; i++)
                    Assert.Equal(usual.Delivered[i], other.Delivered[i], tolerance: 1e-4 * 2.6);
            }
        }, iter: 40);

    // What the wall's heat does while the line fills is all that the short way leaves out.
    [Fact]
    public void Going_on_from_the_filled_line_is_as_good_as_starting_anew() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed =>
        {
            var problem = Problem(seed);
            var filled = DischargeRun.Of(problem, CancellationToken.None).Filled;
            Assert.NotNull(filled);
            foreach (var factor in (ReadOnlySpan<double>)[1, 1.5])
            {
                var other = problem with { Film = 0.05, Cushion = problem.Cushion with { Film = problem.Cushion.Film!.Value.Times(factor) } };
                var (whole, rest) = (DischargeRun.Of(other, CancellationToken.None), DischargeRun.From(other, filled, CancellationToken.None));

                Assert.Equal(whole.Thresholds[0], rest.Thresholds[0], tolerance: 1e-3 * whole.Thresholds[0]);
                for (var i = 0; i < whole.Delivered.Length; i++)
                    Assert.Equal(whole.Delivered[i], rest.Delivered[i], tolerance: 1e-3 * 2.6);
            }
        }, iter: 40);

    [Fact]
    public void While_all_nozzles_are_fed_each_instant_is_the_steady_flow_of_its_pressure() =>
        Gen.Int[0, int.MaxValue - 1].Sample(seed =>
        {
            var problem = Problem(seed);
            var course = DischargeRun.Of(problem with { Tolerance = 1e-8 }, CancellationToken.None);
            var on = course.Arrival.Max();
            var samples = course.Samples.Where(sample => sample.Time > on && sample.Time < course.LiquidEnd).ToArray();
            Assert.True(samples.Length > 5);
            foreach (var sample in samples.Chunk(4).Select(some => some[0]))
            {
                var state = new SteadyState(problem.Network);
                Assert.True(SteadySolver.Solve(state, problem.Liquid, sample.BottlePressure, CancellationToken.None).Converged);
                for (var i = 0; i < sample.Flow.Length; i++)
                    Assert.Equal(state.Flow[problem.Network.Nozzles[i]], sample.Flow[i], tolerance: 1e-5 * course.PeakFlow);
            }
        }, iter: 40);

    [Theory]
    [InlineData(1.2)]
    [InlineData(0.012)]
    public void What_is_kept_does_not_grow_with_the_length_of_the_discharge(double diameter)
    {
        var layout = Documents.Read(FormattableString.Invariant($$"""
            { "format": 1, "agent": "water", "supply": { "bottle": {{Bottle}} },
              "points": [ { "id": "S", "kind": "supply" }, { "id": "N", "kind": "nozzle", "orifice": { "diameter": "{{diameter}} mm", "dischargeCoefficient": 0.8 } } ],
              "runs": [ { "from": "S", "to": "N", "bore": "6 mm", "length": "2 m" } ] }
            """));

        var one = LayoutDischarge.Solve(layout, CancellationToken.None).Cases[0];

        Assert.Null(one.Failure);
        Assert.InRange(one.Series!.Time.Length, 10, 80);
        Assert.InRange(one.Steps, 5, 2000);
    }

    static DischargeProblem Problem(int seed)
    {
        var layout = Documents.Read(new RandomLayout(seed).Document(bottle: Bottle));
        var bottle = ((BottleSupply)layout.Supply).Bottle;
        var place = FlowCalc.Bottles.BottlePlace.Of(bottle, CaseList.Upright.Gravity);
        var conditions = CaseConditions.Of(layout, (FlowCalc.Agents.LiquidAgent)layout.Agent, bottle, 293.15);
        return CaseSetup.Of(layout, CompiledLine.Of(layout, bottle), place, CaseList.Upright.Gravity, 293.15, conditions, new ModelChoice(1, 0.1), [0.9 * 2.6]);
    }
}
