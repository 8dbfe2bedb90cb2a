using System.Text.Json.Nodes;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Asking;

/// <summary>Bodies of calls to the service, as the page's own studies ask them.</summary>
static class RequestText
{
    /// <summary>The body of <c>/v1/size</c>.</summary>
    public static string Size(Sheet sheet, SizeWishes wishes)
    {
        var stock = new JsonObject();
        if (wishes.Tubes.Count > 0) stock["tubes"] = Texts(wishes.Tubes);
        if (Parted(wishes.Orifices) is { Length: > 0 } orifices) stock["orifices"] = Texts(orifices);
        var body = new JsonObject { ["layout"] = sheet.At(""), ["stock"] = stock };
        if (Parted(wishes.Free) is { Length: > 0 } free) body["free"] = Texts(free);
        var wish = new JsonObject();
        if (wishes.Deviation.Length > 0) wish["deviation"] = Number(wishes.Deviation);
        if (Parted(wishes.Within) is { Length: > 0 } within) wish["within"] = Texts(within);
        if (wishes.LeastPressure.Length > 0) wish["leastPressure"] = wishes.LeastPressure;
        if (wish.Count > 0) body["wish"] = wish;
        body["objective"] = wishes.Objective;
        return SheetText.Write(body);
    }

    /// <summary>The body of <c>/v1/tolerance</c>.</summary>
    /// <param name="sheet">The layout.</param>
    /// <param name="spreads">Standard deviations by kind or path, as typed: parts or quantities; those that are empty are left out, and with none the usual ones hold.</param>
    /// <param name="samples">How many samples, as typed.</param>
    /// <param name="answer"><c>flow</c> or <c>discharge</c>.</param>
    public static string Tolerance(Sheet sheet, IEnumerable<(string Path, string Spread)> spreads, string samples, string answer)
    {
        var body = new JsonObject { ["layout"] = sheet.At("") };
        var stated = new JsonObject();
        foreach (var (path, spread) in spreads)
            if (spread.Trim().Length > 0) stated[path] = new JsonObject { ["normal"] = Number(spread.Trim()) };
        if (stated.Count > 0) body["spreads"] = stated;
        if (samples.Length > 0) body["samples"] = Number(samples);
        body["answer"] = answer;
        return SheetText.Write(body);
    }

    // A number where it is one; else the text, of which the reader says what is wrong.
    static JsonNode Number(string text) => Fields.ValueText.Read(text, Fields.ValueForm.Number)!;

    static JsonArray Texts(IEnumerable<string> texts) => [.. texts.Select(text => (JsonNode)JsonValue.Create(text))];

    static string[] Parted(string text) => text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
}
