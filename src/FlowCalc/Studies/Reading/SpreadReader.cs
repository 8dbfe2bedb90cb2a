using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads which things of a layout are spread, and how far.</summary>
/// <param name="layout">The layout; null where it has faults: then only what does not hang on it is looked at.</param>
/// <param name="things">Everything in it that may be spread.</param>
sealed class SpreadReader(Layout? layout, ImmutableArray<SpreadThing> things)
{
    const string Source = "stated in the request";
    const int MostSpreads = 10_000;
    const string Right = "an object of spreads by kind or path, such as { \"bore\": { \"normal\": 0.01 }, \"runs/R1/length\": { \"uniform\": \"10 mm\" } }";

    // By thing what is said of it, and whether that was said of it alone.
    readonly Dictionary<SpreadThing, (JsonValue Element, SpreadForm Form, bool IsOwn)> said = [];

    /// <summary>The variables, in the order of the things; empty where there are faults.</summary>
    public ImmutableArray<SpreadVariable> Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is not JsonValueKind.Object || element.GetArrayLength() is var count && (count == 0 || count > MostSpreads))
        {
            var read = element.ValueKind is JsonValueKind.Object ? $"{element.GetArrayLength()} spreads" : Said.Value(element);
            context.Faults.Add(element, $"read {read}: {Right} is right, with 1 to {MostSpreads} of them; left out, the usual spreads are taken");
            return [];
        }
        HashSet<string> paths = new(StringComparer.Ordinal);
        foreach (var member in element.EnumerateObject())
        {
            context.Cancellation.ThrowIfCancellationRequested();
            if (RawText.Decode(member.RawName) is not { } path) context.Faults.Add(member.Value, "its path holds half of a surrogate pair, which stands for no character");
            else if (!paths.Add(path)) context.Faults.Add(member.Value, $"repeated: {Said.Name(path)} is spread already");
            else ReadOne(context, path, member.Value);
        }
        return Variables(context);
    }

    void ReadOne(ReadingContext context, string path, JsonValue element)
    {
        var names = EditPath.Split(path, out var flaw);
        if (flaw is not null)
        {
            context.Faults.Add(element, flaw);
            return;
        }
        var index = ToleranceFields.Kinds.Words.IndexOf(names[^1]);
        if (index < 0)
        {
            context.Faults.Add(element, $"{Said.Name(path)} is spread by no study: a kind, or a path that ends in one, is right{NearNames.Advice(context, names[^1], ToleranceFields.Kinds.Words)}");
            return;
        }
        var kind = (SpreadKind)index;
        var form = SpreadForm.Read(context, element, kind, layout?.AmbientPressure.Pascals ?? context.Ambient);
        if (layout is null) return;
        var isOwn = names.Length > 1;
        var whole = EditPath.Of([.. names]);
        var meant = things.Where(thing => thing.Kind == kind && (!isOwn || thing.Path == whole)).ToArray();
        if (meant.Length == 0) context.Faults.Add(element, isOwn ? NoSuch(context, names, whole, kind) : $"nothing of the kind {SpreadWords.Of(kind)} is stated in this layout");
        if (form is null) return;
        foreach (var thing in meant)
            if (isOwn || !said.TryGetValue(thing, out var known) || !known.IsOwn) said[thing] = (element, form, isOwn);
    }

    string NoSuch(ReadingContext context, ImmutableArray<string> names, string path, SpreadKind kind)
    {
        if (kind is SpreadKind.Bore or SpreadKind.Roughness && names is ["runs", var id, _] && layout!.Runs.FirstOrDefault(run => run.Id == id) is { Tube.Name: { } tube })
            return $"{Said.Name(path)} names nothing of its own: the tube of {Said.Plain(id)} is {Said.Plain(tube)}, and {EditPath.Of("tubes", tube, names[^1])} is one for all its runs";
        return $"{Said.Name(path)} names nothing in this layout{NearNames.Advice(context, path, [.. things.Where(thing => thing.Kind == kind).Select(thing => thing.Path)])}";
    }

    ImmutableArray<SpreadVariable> Variables(ReadingContext context)
    {
        var variables = ImmutableArray.CreateBuilder<SpreadVariable>();
        foreach (var thing in things)
        {
            if (!said.TryGetValue(thing, out var known)) continue;
            if (known.Form.Of(thing, out var flaw) is not { } values) context.Faults.Add(known.Element, $"{thing.Path} {flaw}");
            else if (Outside(thing, values.Low) is { } low) context.Faults.Add(known.Element, low);
            else if (Outside(thing, values.High) is { } high) context.Faults.Add(known.Element, high);
            else variables.Add(new(thing, values, Source));
        }
        return variables.DrainToImmutable();
    }

    static string? Outside(SpreadThing thing, double value) =>
        thing.Flaw(value) is { } flaw ? $"{thing.Path} would come to {QuantityWriter.Text(value - thing.Base, thing.Quantity, UnitSystem.Metric, 6)}, which is not possible: {flaw}; a smaller spread is right" : null;
}
