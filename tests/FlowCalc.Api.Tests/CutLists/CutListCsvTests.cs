using System.Globalization;
using System.Text.Json.Nodes;
using FlowCalc.Api.CutLists;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.CutLists;

public sealed class CutListCsvTests(Service service) : IDisposable
{
    readonly HttpClient caller = service.Caller();

    public void Dispose() => caller.Dispose();

    async Task<byte[]> Bytes(string document, string query)
    {
        using var response = await caller.PostCutList(document, query);
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Equal("text/csv; charset=utf-8", response.Content.Headers.ContentType?.ToString());
        return await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }

    // The text as it was sent, less its byte order mark.
    async Task<string> Text(string document, string query) => System.Text.Encoding.UTF8.GetString(await Bytes(document, query)).TrimStart('\uFEFF');

    static List<string[]> Rows(string text)
    {
        List<string[]> rows = [];
        List<string> row = [];
        var (field, isQuoted) = (new System.Text.StringBuilder(), false);
        for (var at = 0; at < text.Length; at++)
        {
            if (isQuoted && text[at] == '"' && at + 1 < text.Length && text[at + 1] == '"') field.Append(text[at++]);
            else if (text[at] == '"') isQuoted = !isQuoted;
            else if (!isQuoted && text[at] == ',') { row.Add(field.ToString()); field.Clear(); }
            else if (!isQuoted && text[at] == '\r')
            {
                row.Add(field.ToString());
                field.Clear();
                rows.Add([.. row]);
                row.Clear();
                at++;
            }
            else field.Append(text[at]);
        }
        Assert.True(field.Length == 0 && row.Count == 0, "the last line has no end");
        return rows;
    }

    [Theory]
    [InlineData("?format=csv", "mm", 1e3)]
    [InlineData("?format=csv&part=pieces&units=us", "in", 1 / 0.0254)]
    [InlineData("?format=csv&units=si", "m", 1)]
    public async Task Pieces_are_one_row_each_and_agree_with_the_json(string query, string unit, double perMetre)
    {
        var json = await caller.PostCutList(Documents.Demo, "?units=si").Json(200);
        var rows = Rows(await Text(Documents.Demo, query));

        var header = rows[0];
        var pieces = json.GetProperty("runs").EnumerateArray().SelectMany(run => run.GetProperty("pieces").EnumerateArray().Select(piece => (Run: run, Piece: piece))).ToArray();
        Assert.Equal(pieces.Length, rows.Count - 1);
        Assert.All(rows, row => Assert.Equal(header.Length, row.Length));
        var (cut, mark) = (Array.IndexOf(header, $"cut_{unit}"), Array.IndexOf(header, $"bend_1_at_{unit}"));
        for (var at = 0; at < pieces.Length; at++)
        {
            Assert.Equal(pieces[at].Run.GetProperty("id").GetString(), rows[at + 1][0]);
            Assert.Equal(pieces[at].Piece.GetProperty("cutLength").Value() * perMetre, double.Parse(rows[at + 1][cut], CultureInfo.InvariantCulture), tolerance: 1e-5 * perMetre);
            var bends = pieces[at].Piece.GetProperty("bends");
            if (bends.GetArrayLength() == 0) Assert.Equal("", rows[at + 1][mark]);
            else Assert.Equal(bends[0].GetProperty("at").Value() * perMetre, double.Parse(rows[at + 1][mark], CultureInfo.InvariantCulture), tolerance: 1e-5 * perMetre);
        }
    }

    [Fact]
    public async Task Order_lists_tube_bars_fittings_clips_findings_and_cautions()
    {
        var rows = Rows(await Text(Documents.Demo, "?format=csv&part=order"));

        Assert.Equal(["kind", "name", "count", "size_mm", "length_mm", "note"], rows[0]);
        Assert.All(rows, row => Assert.Equal(6, row.Length));
        var kinds = rows.Select(row => row[0]).ToHashSet();
        Assert.Superset(new HashSet<string> { "tube", "bar", "tee", "nozzle", "bulkhead-union", "clip", "caution" }, kinds);
        Assert.Equal("7", rows.Where(row => row[0] == "nozzle").Sum(row => int.Parse(row[2], CultureInfo.InvariantCulture)).ToString(CultureInfo.InvariantCulture));
        Assert.Contains(rows, row => row[0] is "warn" or "note" or "fail");
    }

    [Theory]
    [InlineData("=HYPERLINK(\"x\")")]
    [InlineData("+1+1")]
    [InlineData("-2+3")]
    [InlineData("@SUM(A1)")]
    public async Task Id_that_a_spreadsheet_would_take_for_a_formula_has_an_apostrophe_before_it(string id)
    {
        var document = Documents.SmallWith(small => small["runs"]![0]!["id"] = id);

        foreach (var part in (string[])["pieces", "order"])
            Assert.DoesNotContain(Rows(await Text(document, $"?format=csv&part={part}")).SelectMany(row => row), field => field.StartsWith(id[..2], StringComparison.Ordinal));
        Assert.Contains(Rows(await Text(document, "?format=csv")), row => row[0] == "'" + id);
    }

    [Theory]
    [InlineData("a;=1+1", "a;'=1+1")]
    [InlineData("a;b;@SUM(A1)", "a;b;'@SUM(A1)")]
    [InlineData("a;b-c", "a;b-c")]
    public async Task Formula_behind_a_semicolon_has_an_apostrophe_before_it_too(string id, string told)
    {
        var document = Documents.SmallWith(small => small["runs"]![0]!["id"] = id);

        Assert.Contains(Rows(await Text(document, "?format=csv")), row => row[0] == told);
    }

    [Fact]
    public async Task Id_with_commas_and_quotes_comes_back_whole_and_a_mark_stands_before_letters_beyond_ascii()
    {
        const string id = "left, \"hot\" düse";
        var document = Documents.SmallWith(small => small["runs"]![0]!["id"] = id);

        var (with, without) = (await Bytes(document, "?format=csv"), await Bytes(Documents.Small, "?format=csv"));

        Assert.Equal(id, Rows(await Text(document, "?format=csv"))[1][0]);
        Assert.Equal([0xEF, 0xBB, 0xBF], with[..3]);
        Assert.Equal((byte)'r', without[0]);
    }

    [Fact]
    public async Task Table_of_too_many_fields_is_refused()
    {
        var document = JsonNode.Parse("""
            { "format": 1, "agent": "water", "supply": { "pressure": "12 bar" }, "points": [{ "id": "s", "kind": "supply", "at": ["0 m", "0 m", "0 m"] }], "runs": [] }
            """)!;
        var via = new JsonArray([.. Enumerable.Range(1, 9_000).Select(at => (JsonNode)new JsonArray($"{500 * at} mm", $"{500 * (at % 2)} mm", "0 m"))]);
        document["points"]!.AsArray().Add(JsonNode.Parse("""{ "id": "j", "kind": "junction", "at": ["4501 m", "0 m", "0 m"] }"""));
        document["runs"]!.AsArray().Add(new JsonObject { ["from"] = "s", ["to"] = "j", ["bore"] = "6 mm", ["bendRadius"] = "0.1 m", ["via"] = via });
        for (var at = 0; at < 100; at++)
        {
            document["points"]!.AsArray().Add(JsonNode.Parse($$"""{ "id": "n{{at}}", "kind": "nozzle", "kFactor": "1 L/min/bar^0.5", "at": ["4501 m", "0 m", "{{at + 1}} m"] }"""));
            document["runs"]!.AsArray().Add(new JsonObject { ["from"] = "j", ["to"] = $"n{at}", ["bore"] = "6 mm" });
        }

        var fault = await caller.PostCutList(document.ToJsonString(), "?format=csv").Fault(422);

        Assert.Contains(PieceTable.MostFields.ToString(CultureInfo.InvariantCulture), fault.GetProperty("errors").GetProperty("")[0].GetString()!, StringComparison.Ordinal);
        await caller.PostCutList(document.ToJsonString()).Json(200);
    }
}
