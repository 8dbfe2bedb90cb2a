using System.Collections.Immutable;
using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Studies.Sizing;

/// <summary>What a choice sets and takes away in its document.</summary>
internal sealed class DocumentEdits
{
    static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    readonly SizeRequest request;
    readonly SizedChoice choice;
    readonly JsonElement document;
    readonly JsonElement[] runs, points;
    readonly List<(string Path, JsonElement? From, JsonElement? To)> edits = [];

    public DocumentEdits(JsonElement document, SizeRequest request, SizedChoice choice)
    {
        (this.document, this.request, this.choice) = (document, request, choice);
        runs = [.. document.GetProperty("runs").EnumerateArray()];
        points = [.. document.GetProperty("points").EnumerateArray()];
    }

    /// <summary>All of them, in an order in which they can be made.</summary>
    public ImmutableArray<(string Path, JsonElement? From, JsonElement? To)> All()
    {
        AddNewTubes();
        foreach (var run in choice.Runs) AddRun(run);
        foreach (var point in choice.Nozzles) AddNozzle(point);
        if (!choice.Nozzles.IsEmpty) AddShares();
        return [.. edits];
    }

    // Tubes that the request describes and the choice uses become the document's own.
    void AddNewTubes()
    {
        var used = choice.Runs.Select(run => choice.Layout.Runs[run].Tube.Name).ToHashSet();
        var isThere = document.TryGetProperty("tubes", out _);
        for (var at = 0; at < request.TubeTexts.Length; at++)
        {
            if (request.TubeTexts[at] is not { } text || request.Problem.Tubes[at].Tube.Name is not { } name || !used.Contains(name)) continue;
            if (isThere) Set(["tubes", name], null, Json(text));
            else Set(["tubes"], null, Json($"{{{JsonSerializer.Serialize(name, Plain)}:{text}}}"));
            isThere = true;
        }
    }

    void AddRun(int run)
    {
        var id = choice.Layout.Runs[run].Id;
        Remove(runs[run], "runs", id, "bore");
        Remove(runs[run], "runs", id, "roughness");
        Set(["runs", id, "tube"], Of(runs[run], "tube"), Text(choice.Layout.Runs[run].Tube.Name!));
    }

    void AddNozzle(int point)
    {
        var (nozzle, before) = ((Nozzle)choice.Layout.Points[point], (Nozzle)request.Problem.Layout.Points[point]);
        var at = request.Problem.Nozzles.IndexOf(request.Problem.Nozzles.First(option => option.On(before) is { } on && SameSize.Of(on, nozzle)));
        if (nozzle.Type is { } type)
        {
            Remove(points[point], "points", nozzle.Id, "kFactor");
            Remove(points[point], "points", nozzle.Id, "orifice");
            Set(["points", nozzle.Id, "nozzle"], Of(points[point], "nozzle"), Text(type));
            return;
        }
        Keep(point, nozzle.Id, "pressureRange");
        Keep(point, nozzle.Id, "spray");
        Remove(points[point], "points", nozzle.Id, "nozzle");
        Remove(points[point], "points", nozzle.Id, nozzle.Orifice is null ? "orifice" : "kFactor");
        if (nozzle.Orifice is not { } orifice)
        {
            Set(["points", nozzle.Id, "kFactor"], Of(points[point], "kFactor"), Json(request.NozzleTexts[at]!));
            return;
        }
        var count = orifice.Count == 1 ? "" : $",\"count\":{orifice.Count.ToString(CultureInfo.InvariantCulture)}";
        var coefficient = orifice.DischargeCoefficient.ToString("R", CultureInfo.InvariantCulture);
        Set(["points", nozzle.Id, "orifice"], Of(points[point], "orifice"), Json($"{{\"diameter\":{request.NozzleTexts[at]},\"dischargeCoefficient\":{coefficient}{count}}}"));
    }

    // What the point had from its type stays when it has that type no longer.
    void Keep(int point, string id, string member)
    {
        if (points[point].TryGetProperty(member, out _) || !points[point].TryGetProperty("nozzle", out var type)) return;
        if (document.GetProperty("nozzles").GetProperty(type.GetString()!).TryGetProperty(member, out var value)) Set(["points", id, member], null, value.Clone());
    }

    // A share that is split by K-factor would move with it.
    void AddShares()
    {
        double[] before = WantedShares.Of(request.Problem.Layout), after = WantedShares.Of(choice.Layout);
        if (before.Zip(after, (one, other) => Math.Abs(one - other)).All(difference => difference <= 1e-12)) return;
        for (var point = 0; point < before.Length; point++)
            if (choice.Layout.Points[point] is Nozzle { Share: null } nozzle && before[point] > 0)
                Set(["points", nozzle.Id, "share"], null, Json(before[point].ToString("R", CultureInfo.InvariantCulture)));
    }

    void Remove(JsonElement owner, string list, string id, string member)
    {
        if (owner.TryGetProperty(member, out var value)) edits.Add((EditPath.Of(list, id, member), value.Clone(), null));
    }

    void Set(ReadOnlySpan<string> names, JsonElement? from, JsonElement to) => edits.Add((EditPath.Of(names), from, to));

    static JsonElement? Of(JsonElement owner, string member) => owner.TryGetProperty(member, out var value) ? value.Clone() : null;

    static JsonElement Text(string text) => Json(JsonSerializer.Serialize(text, Plain));

    static JsonElement Json(string text)
    {
        using var parsed = JsonDocument.Parse(text, new JsonDocumentOptions { MaxDepth = 1_000 });
        return parsed.RootElement.Clone();
    }
}
