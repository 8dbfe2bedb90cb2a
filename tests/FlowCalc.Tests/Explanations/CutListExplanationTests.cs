using FlowCalc.Examples;
using FlowCalc.Explanations;
using FlowCalc.Layouts;
using FlowCalc.Quantities;
using FlowCalc.Routes;
using FlowCalc.Tests.Routes;

namespace FlowCalc.Tests.Explanations;

/// <summary>Every step of the explanation of a cut list holds by itself, and together they give the list.</summary>
public class CutListExplanationTests
{
    const double Metre = 1e-9;

    public static TheoryData<string> Examples => [.. ExampleCatalogue.All.Select(example => example.Name)];

    static (Layout Layout, CutList List, CutListExplanation Explained) Explain(string json)
    {
        var layout = RouteDocument.Read(json);
        var list = CutList.Of(layout, TestContext.Current.CancellationToken);
        var explained = CutListExplainer.Of(layout, list, TestContext.Current.CancellationToken);
        RedoneByHand.Check(explained.Steps);
        AnswersAgree(layout, list, explained);
        return (layout, list, explained);
    }

    [Theory]
    [MemberData(nameof(Examples))]
    public void Every_step_of_an_example_is_redone_by_hand_and_gives_the_list(string name)
    {
        var (_, _, explained) = Explain(System.Text.Encoding.UTF8.GetString(ExampleCatalogue.Find(name)!.Value.Span));

        foreach (var system in Enum.GetValues<UnitSystem>())
            Assert.All(explained.Steps, step => RedoneByHand.CheckWorked(step, WorkedLine.Of(step, system)));
        Assert.Equal(explained.Steps.Select(step => step.Equation).Distinct().Order(Comparer<Equation>.Create((one, other) => EquationSheet.All.IndexOf(one).CompareTo(EquationSheet.All.IndexOf(other)))), explained.Equations);
    }

    [Fact]
    public void Every_step_of_runs_with_random_corners_is_redone_by_hand()
    {
        for (var seed = 0; seed < 200; seed++)
        {
            var random = new Random(seed);
            double[][] places = [.. Enumerable.Range(0, random.Next(2, 8)).Select(at => (double[])[at * 0.4 + random.NextDouble() * 0.1, random.Next(3) * 0.2, random.Next(3) * 0.15])];
            var stock = random.Next(2) == 0 ? """ "stock": [ { "lengths": ["6 m", "4 m"] } ], "kerf": "1.5 mm", "spare": 0.05 """ : """ "stock": [ { "coil": "25 m" } ], "insertion": "9 mm" """;
            Explain(RouteDocument.Through(places, 0.02, rest: $$""" , "cutting": { {{stock}} } """));
        }
    }

    [Fact]
    public void A_run_in_space_says_legs_planes_turns_setbacks_and_rotation()
    {
        var (_, list, explained) = Explain(RouteDocument.Through([[0, 0, 0], [0.5, 0, 0], [0.5, 0.4, 0], [0.5, 0.4, 0.3]], 0.024));

        double Told(string equation, string part) => explained.Steps.Single(step => step.Equation.Id == equation && step.Part == part).Result.Si;
        // By hand: forward, left, up; right angles in two planes that are square to each other, setback 24 mm, arc 24·π/2. From z the arrow goes to x, right-handed about y.
        Assert.Equal(0.024, Told("bend-setback", "bend 1"), Metre);
        Assert.Equal(0.024 * Math.PI / 2, Told("bend-arc", "bend 2"), Metre);
        Assert.Equal(0.5 - 0.024, Told("straight-of-run", "straight 1"), Metre);
        Assert.Equal(0.4 - 0.048, Told("straight-of-run", "straight 2"), Metre);
        Assert.Equal(Math.PI / 2, Told("bend-rotation", "bend 2"), Metre);
        Assert.Equal(0.476, Told("bend-mark", "piece 1, bend 1"), Metre);
        Assert.Equal(1.2 - 2 * (0.048 - 0.024 * Math.PI / 2), Told("developed-length", "run"), Metre);
        Assert.Equal(list.Runs[0].Pieces[0].Bends[1].Rotation!.Value.Radians, Told("bend-rotation", "bend 2"), Metre);
    }

    [Fact]
    public void A_bend_turned_over_rotates_by_half_a_turn() =>
        Assert.Equal(Math.PI, Explain(RouteDocument.Through([[0, 0, 0], [0.5, 0, 0], [0.5, 0.4, 0], [0.9, 0.4, 0]], 0.024)).Explained.Steps.Single(step => step.Equation.Id == "bend-rotation-half").Result.Si, Metre);

    [Fact]
    public void A_corner_that_hardly_turns_is_a_leg_of_its_straight()
    {
        var (_, _, explained) = Explain(RouteDocument.Through([[0, 0, 0], [0.3, 0, 0], [0.8, 0.0001, 0], [0.8, 0.5, 0], [0.8, 0.5, 0.4]], 0.024));

        Assert.Equal(3, explained.Steps.Single(step => step is { Equation.Id: "straight-of-run", Part: "straight 1" }).Values.Length);
    }

    [Fact]
    public void Allowances_say_what_they_come_from()
    {
        var (_, _, explained) = Explain(RouteDocument.Long("3 m", run: """
            , "startJoint": { "insertion": "11 mm" }, "endJoint": { "centreToStop": "7 mm" },
            "fittings": [ { "fitting": { "kind": "union", "centreToStop": "3 mm" }, "at": "1 m" }, { "fitting": { "kind": "check-valve", "lossCoefficient": 2, "length": "30 mm" }, "at": "2 m" } ]
            """));

        string[] Laws(string part) => [.. explained.Steps.Where(step => step.Part == part && step.Equation.Id.StartsWith("allowance", StringComparison.Ordinal)).Select(step => step.Equation.Id)];
        Assert.Equal(["allowance-insertion"], Laws("piece 1: start"));
        Assert.Equal(["allowance-stop"], Laws("piece 1: end"));
        Assert.Equal(["allowance-stop"], Laws("piece 2: start"));
        Assert.Equal(["allowance-half-length"], Laws("piece 2: end"));
        Assert.Equal(["allowance-half-length"], Laws("piece 3: start"));
        Assert.Equal(["allowance-stop"], Laws("piece 3: end"));
        Assert.Equal(1 + 0.011 - 0.003, explained.Steps.Single(step => step is { Equation.Id: "piece-length", Part: "piece 1" }).Result.Si, Metre);
    }

    [Theory]
    [InlineData("aluminium", "8 mm", "clip-spacing")]
    [InlineData("aluminium", "3 mm", "clip-spacing")]
    [InlineData("steel", "80 mm", "clip-spacing-largest")]
    [InlineData("copper", "8 mm", "clip-spacing-usual")]
    [InlineData("unobtainium", "40 mm", "clip-spacing-usual")]
    public void Spacing_of_clips_says_between_which_rows_of_the_table_it_lies(string material, string outside, string law)
    {
        var (_, list, explained) = Explain(RouteDocument.Through([[0, 0, 0], [3, 0, 0]], 0.1, tube: $$""" "outsideDiameter": "{{outside}}", "wall": "1 mm", "roughness": "1.5 µm", "material": "{{material}}" """));

        Assert.Equal(list.Runs[0].Clips.Table.Meters, explained.Steps.Single(step => step.Equation.Id == law).Result.Si, Metre);
    }

    [Fact]
    public void Sleeves_and_stock_are_explained()
    {
        var (_, _, explained) = Explain(RouteDocument.Long(
            "3 m", run: """, "hotPlaces": [ { "from": "20 mm", "to": "500 mm", "sleeved": true }, { "from": "1 m", "to": "1.2 m" }, { "from": "2.8 m", "to": "2.99 m", "sleeved": true } ]""",
            rest: """, "cutting": { "stock": [ { "lengths": ["2 m", "5 m"] } ] }"""));

        Assert.Equal([0.55, 0.25], explained.Steps.Where(step => step.Equation.Id == "sleeve-length").Select(step => Math.Round(step.Result.Si, 9)));
        foreach (var law in (string[])["bar-content", "bar-offcut", "stock-bound-content", "stock-bound-long", "stock-bound-bars", "stock-bound", "spare-bars", "tube-mass", "tube-volume", "order-length"])
            Assert.Contains(explained.Steps, step => step.Equation.Id == law);
    }

    [Fact]
    public void Parts_count_runs_and_what_is_on_them() =>
        Assert.Equal(1 + 2 + 1, CutListExplainer.Parts(RouteDocument.Read(RouteDocument.Long("3 m", run: """
            , "fittings": [ { "kind": "union", "bore": "5 mm", "length": "20 mm" }, { "kind": "check-valve", "lossCoefficient": 2 } ], "hotPlaces": [ { "from": "20 mm", "to": "500 mm" } ]
            """))));

    static void AnswersAgree(Layout layout, CutList list, CutListExplanation explained)
    {
        foreach (var cut in list.Runs)
        {
            var own = explained.Steps.Where(step => step.Place == ExplainedPlace.Run && step.Id == layout.Runs[cut.Run].Id).ToArray();
            if (layout.Runs[cut.Run].Route is not null) Assert.Equal(cut.Length.Meters, own.Single(step => step.Equation.Id == "developed-length").Result.Si, Metre);
            Assert.Equal(cut.Pieces.Select(piece => piece.Exact.Meters), Results(own, "piece-length"));
            Assert.Equal(cut.Pieces.Where(piece => piece.Cut is not null).Select(piece => piece.Cut!.Value.Meters), Results(own, "cut-length"));
            Assert.Equal(cut.Pieces.Where(piece => piece.Sawn is not null).Select(piece => piece.Sawn!.Value.Meters), Results(own, "sawn-length"));
            Assert.Equal(cut.Pieces.SelectMany(piece => piece.Bends).Select(bend => bend.At.Meters), Results(own, "bend-mark"));
            Assert.Equal(cut.Pieces.SelectMany(piece => piece.Bends.IsEmpty ? [] : piece.Straights.Skip(1)).Select(straight => straight.Meters), Results(own, "straight-of-piece"));
            Assert.Equal(cut.Sleeves.Select(sleeve => sleeve.Length.Meters), Results(own, "sleeve-length"));
            if (!cut.Clips.AreStated && cut.Length.Meters > 0) Assert.Equal(cut.Clips.Count, Assert.Single(Results(own, "clip-count")));
        }
        foreach (var tubes in list.Tubes.GroupBy(order => TubeLabel.Of(order.Tube)))
        {
            var own = explained.Steps.Where(step => step.Place == ExplainedPlace.Tube && step.Id == tubes.Key).ToArray();
            Assert.Equal(tubes.Select(order => order.Order.Meters), Results(own, "order-length"));
            Assert.Equal(tubes.Where(order => order.Mass is not null).Select(order => order.Mass!.Value.Kilograms), Results(own, "tube-mass"));
            Assert.Equal(tubes.Select(order => order.Filled.CubicMeters), Results(own, "tube-volume"));
            Assert.Equal(tubes.SelectMany(order => order.Stock?.Bars ?? []).Select(bar => bar.Offcut.Meters), Results(own, "bar-offcut"));
            foreach (var (plan, bound) in tubes.Where(order => order.Stock is { Bars.IsEmpty: false }).Select(order => order.Stock!).Zip(Results(own, "stock-bound")))
                Assert.InRange(bound, 0, plan.LeastPossible.Meters);
        }
    }

    static IEnumerable<double> Results(ExplanationStep[] steps, string equation) => steps.Where(step => step.Equation.Id == equation).Select(step => step.Result.Si);
}
