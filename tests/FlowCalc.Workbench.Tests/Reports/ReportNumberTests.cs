using System.Globalization;
using System.Text;
using System.Text.Json;
using FlowCalc.Examples;
using FlowCalc.Workbench.Tests.Hosting;

namespace FlowCalc.Workbench.Tests.Reports;

/// <summary>The numbers of a report are those of the other calls, rounded to three digits; they are rounded here once more, in another way.</summary>
public sealed class ReportNumberTests(Site site)
{
    [Theory]
    [InlineData("metric")]
    [InlineData("us")]
    public async Task Every_nozzle_case_and_piece_of_the_demo_stands_in_the_pdf_with_the_numbers_of_the_calls(string units)
    {
        var pdf = new ReadPdf(await BytesAsync($"/v1/report?format=pdf&units={units}"));
        var flow = await JsonAsync($"/v1/flow?units={units}");
        var discharge = await JsonAsync($"/v1/discharge?units={units}");
        var cuts = await JsonAsync($"/v1/cut-list?units={units}");

        foreach (var nozzle in flow.GetProperty("nozzles").EnumerateArray())
            Assert.Contains($"{Text(nozzle, "zone")} {Text(nozzle, "id")} {Rounded(nozzle, "pressure")} {Rounded(nozzle, "volumeFlow")} {Rounded(nozzle, "massFlow")} {Percent(nozzle, "share")} {Percent(nozzle, "wantedShare")} {Deviation(nozzle)}", pdf.Lines);
        foreach (var one in discharge.GetProperty("cases").EnumerateArray())
        {
            var band = one.GetProperty("band").GetProperty("time95");
            Assert.Contains(pdf.Lines, line => line.StartsWith($"{Rounded(one, "temperature")}, {Text(one, "attitude")} {Rounded(one, "startPressure")} ", StringComparison.Ordinal)
                && line.Contains($" {Rounded(one, "liquidEnd")} {Rounded(one, "time95")} {Rounded(band, "low")} to {Rounded(band, "high")} ", StringComparison.Ordinal));
        }
        // The slowest case is charted, with its nozzles.
        var slowest = discharge.GetProperty("cases").EnumerateArray().MaxBy(one => one.GetProperty("time95").GetProperty("value").GetDouble());
        foreach (var nozzle in slowest.GetProperty("nozzles").EnumerateArray())
            Assert.Contains(pdf.Lines, line => line.StartsWith($"{Text(nozzle, "id")} {Rounded(nozzle, "arrival")} {Rounded(nozzle, "mass")} {Percent(nozzle, "share")} ", StringComparison.Ordinal));
        foreach (var run in cuts.GetProperty("runs").EnumerateArray())
            foreach (var piece in run.GetProperty("pieces").EnumerateArray())
            {
                var bends = piece.GetProperty("bends").EnumerateArray().ToArray();
                Assert.Contains(
                    $"{Text(run, "id")} {piece.GetProperty("number").GetInt32()} {Text(run, "tube")} {Text(piece.GetProperty("start"), "fitting")} {Text(piece.GetProperty("end"), "fitting")} {Bench(piece, "cutLength", units)} {Bench(piece, "sawnLength", units)} {Bench(piece.GetProperty("start"), "insertion", units)} {Bench(piece.GetProperty("end"), "insertion", units)} {bends.Length}",
                    pdf.Lines);
                for (var at = 0; at < bends.Length; at++)
                    Assert.Contains(pdf.Lines, line => line.StartsWith($"{Text(run, "id")} {piece.GetProperty("number").GetInt32()} {at + 1} {Bench(bends[at], "at", units)} {Angle(bends[at], "angle")} ", StringComparison.Ordinal));
            }
        foreach (var finding in flow.GetProperty("findings").EnumerateArray().Concat(discharge.GetProperty("findings").EnumerateArray()))
            Assert.Contains(Text(finding, "message").Split(' ')[0], pdf.Text, StringComparison.Ordinal);
    }

    static string Text(JsonElement of, string name) => of.GetProperty(name).GetString()!;

    static string Rounded(JsonElement of, string name)
    {
        var quantity = of.GetProperty(name);
        var (value, unit) = (quantity.GetProperty("value").GetDouble(), Text(quantity, "unit"));
        // Everyday masses under a tenth of a kilogram are in grams.
        return unit == "kg" && Math.Abs(value) < 0.1 ? $"{Digits(1000 * value)} g" : $"{Digits(value)} {unit}";
    }

    static string Digits(double value)
    {
        if (value == 0) return "0";
        var places = 2 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var rounded = places >= 0 ? Math.Round((decimal)value, places, MidpointRounding.AwayFromZero) : Math.Round((decimal)value * (decimal)Math.Pow(10, places), MidpointRounding.AwayFromZero) * (decimal)Math.Pow(10, -places);
        return rounded.ToString("0.############", CultureInfo.InvariantCulture);
    }

    static string Percent(JsonElement of, string name) => Math.Round(100m * of.GetProperty(name).GetDecimal(), 1, MidpointRounding.AwayFromZero).ToString("0.0", CultureInfo.InvariantCulture) + " %";

    static string Deviation(JsonElement of)
    {
        var part = Math.Round(100m * of.GetProperty("deviation").GetDecimal(), 1, MidpointRounding.AwayFromZero);
        return $"{(part > 0 ? "+" : part < 0 ? "−" : "")}{Math.Abs(part).ToString("0.0", CultureInfo.InvariantCulture)} %";
    }

    static string Angle(JsonElement of, string name) => Digits(of.GetProperty(name).GetProperty("value").GetDouble()) + "°";

    static string Bench(JsonElement of, string name, string units)
    {
        if (of.GetProperty(name).ValueKind == JsonValueKind.Null) return "–";
        var length = of.GetProperty(name).GetProperty("value").GetDouble();
        return units == "metric" ? Math.Round(1000 * length, 1).ToString("0.#", CultureInfo.InvariantCulture) : Math.Round(12 * length, 3).ToString("0.###", CultureInfo.InvariantCulture);
    }

    async Task<JsonElement> JsonAsync(string call)
    {
        using var document = JsonDocument.Parse(await BytesAsync(call));
        return document.RootElement.Clone();
    }

    async Task<byte[]> BytesAsync(string call)
    {
        using var caller = new HttpClient { BaseAddress = site.Address };
        using var body = new ByteArrayContent(ExampleCatalogue.Find("raid-pickup")!.Value.ToArray());
        body.Headers.ContentType = new("application/json");
        using var answer = await caller.PostAsync(new Uri(call, UriKind.Relative), body, TestContext.Current.CancellationToken);
        var bytes = await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.True(answer.IsSuccessStatusCode, Encoding.UTF8.GetString(bytes));
        return bytes;
    }
}
