using System.Globalization;
using FlowCalc.Agents;
using FlowCalc.Examples;
using FlowCalc.Exchange;
using FlowCalc.Flows;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Exchange;

public sealed class EpanetInputTests
{
    public static TheoryData<string> Liquids => [.. ExampleCatalogue.All.Select(example => example.Name).Where(name => Read(name).Agent is LiquidAgent)];

    [Theory, MemberData(nameof(Liquids))]
    public void Coefficients_and_heights_of_the_file_add_up_to_our_own_drops(string example)
    {
        var layout = Read(example);
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);

        var file = new Sections(EpanetInput.Write(layout, flow));

        var density = ((LiquidAgent)layout.Agent).Density(layout.Temperature.Kelvins);
        const double g = 32.2 * 0.3048;
        for (var at = 0; at < layout.Runs.Length; at++)
        {
            var (run, told, pipe) = (layout.Runs[at], flow.Runs[at], file.Row("PIPES", EpanetInput.RunName(at)));
            var (from, to) = (layout.Points[run.From] is SupplyPoint ? flow.Supply!.ReservoirPressure : flow.PointPressures[run.From], flow.PointPressures[run.To]);
            var lost = Number(pipe[6]) * density * Math.Pow(told.Velocity.MetersPerSecond, 2) / 2;
            var climbed = (Height(file, layout, run.To) - Height(file, layout, run.From)) * density * g;
            // What a run gains in its tee shortens the pipe, and its friction with it.
            var rubbed = told.Losses.Tube.Pascals * Number(pipe[3]) / LayoutCompiler.Straight(run);
            Assert.Equal((from - to).Pascals, lost + climbed + rubbed, tolerance: 1e-6 * from.Pascals);
            Assert.Equal(run.Tube.Bore.Millimeters, Number(pipe[4]), tolerance: 1e-12);
        }
        Assert.Equal((flow.Supply!.ReservoirPressure - layout.AmbientPressure).Pascals, Number(file.Row("RESERVOIRS", "P" + SupplyOf(layout))[1]) * density * g, tolerance: 1e-3);
    }

    [Theory, MemberData(nameof(Liquids))]
    public void An_emitter_passes_at_its_head_what_the_nozzle_passes_at_its_pressure(string example)
    {
        var layout = Read(example);
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);
        var file = new Sections(EpanetInput.Write(layout, flow));

        var density = ((LiquidAgent)layout.Agent).Density(layout.Temperature.Kelvins);
        foreach (var nozzle in flow.Nozzles)
        {
            var head = (nozzle.Pressure - layout.AmbientPressure).Pascals / (density * 32.2 * 0.3048);
            var litres = Number(file.Row("EMITTERS", EpanetInput.PointName(nozzle.Point))[1]) * Math.Sqrt(head);
            Assert.Equal(nozzle.VolumeFlow.LitersPerSecond, litres, tolerance: 1e-9);
        }
    }

    [Fact]
    public void A_nozzle_that_height_holds_shut_has_no_emitter_which_would_draw()
    {
        var layout = LayoutReader.Read("""
            {
              "format": 1, "agent": "water", "supply": { "pressure": "2 bar" },
              "points": [{ "id": "s", "kind": "supply" }, { "id": "t", "kind": "tee", "fedThrough": "branch" }, { "id": "low", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }, { "id": "high", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" }],
              "runs": [{ "from": "s", "to": "t", "bore": "8 mm", "length": "1 m" }, { "from": "t", "to": "low", "bore": "8 mm", "length": "1 m" }, { "from": "t", "to": "high", "bore": "8 mm", "length": "26 m", "rise": "25 m" }]
            }
            """u8.ToArray(), null, TestContext.Current.CancellationToken).Layout!;
        var flow = SteadyFlow.Solve(layout, TestContext.Current.CancellationToken);

        var lines = EpanetInput.Write(layout, flow).Split('\n');

        Assert.Equal(0, flow.Nozzles[1].MassFlow.KilogramsPerSecond);
        Assert.Equal(["P2"], lines.SkipWhile(line => line != "[EMITTERS]").Skip(1).TakeWhile(line => line[0] != '[').Select(line => line.Split(' ')[0]));
    }

    [Fact]
    public void Names_of_the_document_are_comments_and_break_no_line()
    {
        var layout = Read("raid-pickup");
        layout = layout with { Title = "a\r\n[PIPES];x", Points = [.. layout.Points.Select((point, at) => point with { Id = $"[END]\n;{at}{new string('W', 300)}" })] };

        var text = EpanetInput.Write(layout, SteadyFlow.Solve(layout, TestContext.Current.CancellationToken));

        string[] titles = ["[TITLE]", "[JUNCTIONS]", "[RESERVOIRS]", "[PIPES]", "[EMITTERS]", "[OPTIONS]", "[TIMES]", "[END]"];
        Assert.Equal(titles, text.Split('\n').Where(line => line.StartsWith('[')));
        Assert.DoesNotContain('\r', text);
        Assert.All(text.Split('\n'), line => Assert.True(line.Length < 255, line));
    }

    [Fact]
    public void A_gas_is_refused_in_words_and_a_flow_that_was_not_found_too()
    {
        var gas = Read("cabinet-inert-gas");

        Assert.Contains("no liquid", EpanetInput.Refusal(gas, SteadyFlow.Solve(gas, TestContext.Current.CancellationToken)), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => EpanetInput.Write(gas, SteadyFlow.Solve(gas, TestContext.Current.CancellationToken)));
    }

    static double Height(Sections file, Layout layout, int point) => layout.Points[point] is SupplyPoint ? 0 : Number(file.Row("JUNCTIONS", EpanetInput.PointName(point))[1]);

    static int SupplyOf(Layout layout) => layout.Points.IndexOf(layout.Points.Single(point => point is SupplyPoint));

    static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    static Layout Read(string example) => LayoutReader.Read(ExampleCatalogue.Find(example)!.Value).Layout!;

    // The file as a reader of the format takes it: sections of rows, what comes after a semicolon left out.
    sealed class Sections
    {
        readonly Dictionary<string, Dictionary<string, string[]>> rows = [];

        public Sections(string text)
        {
            var section = "";
            foreach (var line in text.Split('\n').Select(line => line.Split(';')[0].Trim()).Where(line => line.Length > 0))
            {
                if (line[0] == '[') rows[section = line.Trim('[', ']')] = [];
                else if (line.Split(' ') is var words) rows[section][words[0]] = words;
            }
        }

        public string[] Row(string section, string name) => rows[section][name];
    }
}
