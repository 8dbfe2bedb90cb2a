using System.Globalization;
using System.Text;
using FlowCalc.Layouts;

namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of the shape: what is not a tree from one supply to its nozzles.</summary>
public class TreeFaultTests
{
    /// <summary>A document from a short notation: points as kind letter and name (s, t run-fed tee, b bullhead, r, j, n, c), runs as from&gt;to with an optional port.</summary>
    static string Document(string points, string runs)
    {
        var json = new StringBuilder("""{ "format": 1, "agent": "water", "supply": { "pressure": "12 bar" }, "points": [""");
        json.AppendJoin(", ", points.Split(' ').Select(point => $$"""{ "id": "{{point[1..]}}", {{Kind(point[0])}} }"""));
        json.Append("""], "runs": [""");
        json.AppendJoin(", ", runs.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(Run));
        return json.Append("] }").ToString();
    }

    static string Kind(char letter) => letter switch
    {
        's' => """ "kind": "supply" """,
        't' => """ "kind": "tee", "fedThrough": "run" """,
        'b' => """ "kind": "tee", "fedThrough": "branch" """,
        'r' => """ "kind": "reducer" """,
        'j' => """ "kind": "junction" """,
        'n' => """ "kind": "nozzle", "kFactor": "1 L/min/bar^0.5" """,
        'c' => """ "kind": "cap" """,
        _ => """ "kind": "unheard-of" """,
    };

    static string Run(string run)
    {
        var (way, port) = run.Split('/') is [var ends, var leaves] ? (ends, $", \"leaves\": \"{leaves}\"") : (run, "");
        var (from, to) = way.Split('>') is [var start, var end] ? (start, end) : throw new ArgumentException(run);
        return $$"""{ "from": "{{from}}", "to": "{{to}}", "bore": "8 mm", "length": "1 m"{{port}} }""";
    }

    [Theory]
    [InlineData("jA nB", "A>B", "/points", "no point is a supply")]
    [InlineData("sA cB", "A>B", "/points", "there is nothing to discharge")]
    [InlineData("sA sB nC", "A>C B>C", "/points/1/kind,/runs/1/to", "2 supplies")]
    [InlineData("sA nB", "", "/points/0,/points/1", "exactly one leaves a supply")]
    [InlineData("sA nB nC", "A>B A>C", "/runs/1/from", "exactly one a supply")]
    [InlineData("sA jB nC", "A>B B>C B>A", "/runs/2/to", "no run comes to a supply")]
    [InlineData("sA jB nC", "A>B B>C C>B", "/runs/2/to,/runs/2/from", "two feeds; 'A-B' comes to it already")]
    [InlineData("sA jB jC nD", "A>B B>C B>D C>D", "/runs/3/to", "two feeds")]
    [InlineData("sA jB nC nD", "A>B B>C", "/points/3", "'D' is not reached from the supply")]
    [InlineData("sA jB nC jD nE", "A>B B>C D>E", "/points/3", "'D' is not reached from the supply")]
    [InlineData("sA nB jC jD", "A>B C>D D>C", "/runs/1", "2 runs make a loop that the supply does not reach: 'C-D', 'D-C'")]
    [InlineData("sA nB jC jD nE", "A>B D>C C>D C>E", "/runs/1", "2 runs make a loop")]
    [InlineData("sA jB nC", "A>B B>C B>B", "/runs/2/to", "from a point to itself")]
    [InlineData("sA nB jC", "A>B C>C", "/runs/1/to", "from a point to itself")]
    [InlineData("sA tB nC", "A>B B>C/run", "/points/1", "one leaves 'B': exactly two leave a tee")]
    [InlineData("sA tB", "A>B", "/points,/points/1", "no run leaves 'B': exactly two leave a tee")]
    [InlineData("sA bB nC nD nE", "A>B B>C B>D B>E", "/runs/3/from", "3 runs leave it; exactly two a tee")]
    [InlineData("sA rB nC nD", "A>B B>C B>D", "/runs/2/from", "exactly one a reducer")]
    [InlineData("sA rB jC nD", "A>C C>B C>D", "/points/1", "exactly one leaves a reducer")]
    [InlineData("sA jC jB nD", "A>C C>B C>D", "/points/2", "a closed end is a cap")]
    [InlineData("sA nB nC", "A>B B>C", "/runs/1/from", "no run leaves a nozzle")]
    [InlineData("sA jB cC nD nE", "A>B B>C B>D C>E", "/runs/3/from", "no run leaves a cap")]
    public void What_is_no_tree_is_a_fault_without_faults_that_follow_from_it(string points, string runs, string pointers, string words)
    {
        var faults = Specimen.Read(Document(points, runs)).Faults;

        Assert.Equal(pointers.Split(',').Order(), faults.Select(fault => fault.Pointer).Order());
        Assert.Contains(faults, fault => fault.Message.Contains(words, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("sA ?B nC", "A>B B>C", "/points/1/kind")]
    [InlineData("sA jB nC", "A>B B>X B>C", "/runs/1/to")]
    [InlineData("sA jB nC nD", "A>B B>X B>C", "/runs/1/to")]
    [InlineData("sA jB nC", "A>B X>C", "/runs/1/from")]
    [InlineData("?A jB nC", "A>B B>C", "/points/0/kind")]
    [InlineData("sA ?B", "A>B", "/points/1/kind")]
    public void What_could_not_be_read_brings_no_other_faults(string points, string runs, string pointer)
    {
        var fault = Assert.Single(Specimen.Read(Document(points, runs)).Faults);

        Assert.Equal(pointer, fault.Pointer);
    }

    [Fact]
    public void A_chain_and_a_star_of_a_hundred_thousand_points_are_read_without_recursion()
    {
        const int count = 100_000;
        var numbers = Enumerable.Range(0, count - 2).Select(i => i.ToString(CultureInfo.InvariantCulture)).ToArray();
        var chain = Document($"ss {string.Join(' ', numbers.Select(i => "j" + i))} ne", $"s>0 {string.Join(' ', numbers[1..].Select((to, from) => $"{from}>{to}"))} {numbers[^1]}>e");
        var star = Document($"ss jhub {string.Join(' ', numbers.Select(i => "n" + i))}", $"s>hub {string.Join(' ', numbers.Select(i => $"hub>{i}"))}");

        var read = new[] { Specimen.Read(chain), Specimen.Read(star) };

        Assert.All(read, reading => Assert.Equal(count, reading.Layout!.Points.Length));
    }

    [Fact]
    public void A_ring_of_a_hundred_thousand_points_is_one_fault()
    {
        const int count = 99_998;
        var json = Document($"ss ne {string.Join(' ', Enumerable.Range(0, count).Select(i => $"j{i}"))}", $"s>e {string.Join(' ', Enumerable.Range(0, count).Select(i => $"{i}>{(i + 1) % count}"))}");

        var fault = Assert.Single(Specimen.Read(json).Faults);

        Assert.Equal("/runs/1", fault.Pointer);
        Assert.StartsWith("99998 runs make a loop", fault.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void More_points_than_allowed_are_one_fault_and_are_not_read()
    {
        var json = Document("sA jB nC", "A>B B>C");

        var fault = Assert.Single(Specimen.Read(json, new LayoutReaderOptions { MaximumPoints = 2 }).Faults);

        Assert.Equal(new LayoutFault("/points", "read 3 points: 2 are the most that are read"), fault);
    }
}
