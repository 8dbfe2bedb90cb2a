using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Limits;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a limit: its steps.</summary>
enum LimitField
{
    Note,
    Warn,
    Fail,
    Refuse,
}

/// <summary>Reads the limits that a document states itself.</summary>
static class LimitReader
{
    static readonly ImmutableArray<string> Codes = [.. DefaultLimits.All.Select(known => known.Code)];

    // A straight between two bends is negative where their arcs overlap.
    static readonly ImmutableArray<string> MayBeNegative = ["bends-overlap", "bends-interact", "joint-straight-short"];

    /// <summary>The limits in the document's order.</summary>
    public static ImmutableArray<Limit> Read(ReadingContext context, JsonValue element) =>
        [.. NamedEntries<Limit>.Read(context, element, "limits", One).Entries];

    static Limit? One(ReadingContext context, string code, JsonValue element)
    {
        if (DefaultLimits.Find(code) is not { } definition)
        {
            context.Faults.Add(element, $"{Said.Name(code)} is no finding with limits{NearNames.Advice(context, code, Codes)}");
            return null;
        }
        if (!LayoutFields.Limit.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        var mayBeNegative = MayBeNegative.Contains(code);
        var limit = new Limit(
            code,
            Step(context, members[LimitField.Note], definition.Kind, mayBeNegative),
            Step(context, members[LimitField.Warn], definition.Kind, mayBeNegative),
            Step(context, members[LimitField.Fail], definition.Kind, mayBeNegative),
            Step(context, members[LimitField.Refuse], definition.Kind, mayBeNegative),
            DefaultLimits.StatedInTheDocument);
        if (context.Faults.Count > before) return null;
        if (limit is { Note: null, Warn: null, Fail: null, Refuse: null })
            context.Faults.Add(element, $"read no step: a limit has one or more of {LayoutFields.Limit.Listed}");
        else if (!definition.IsInOrder(limit))
            context.Faults.Add(element, $"its steps are out of order: from note over warn and fail to refuse each is the same or {(definition.LowerIsWorse ? "less" : "more")}");
        return limit;
    }

    static Measure? Step(ReadingContext context, JsonValue element, QuantityKind? kind, bool mayBeNegative)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (kind is null)
        {
            var number = NumberValue.Read(context, element, Sizes.Limit);
            return double.IsFinite(number) && !IsTooLow(context, element, number, mayBeNegative) ? new Measure(number, null) : null;
        }
        if (!QuantityValue.TryRead(context, element, kind.Value, out var reading)) return null;
        // A measured pressure is gauge, so an absolute limit comes down by the ambient pressure.
        var si = kind is QuantityKind.Pressure && !reading.IsGauge ? reading.Si - context.Ambient : reading.Si;
        if (Math.Abs(si) <= Sizes.Limit.Most) return IsTooLow(context, element, si, mayBeNegative) ? null : new Measure(si, kind);
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: a limit of over 1000000000 in SI units is none");
        return null;
    }

    static bool IsTooLow(ReadingContext context, JsonValue element, double si, bool mayBeNegative)
    {
        if (si >= 0 || mayBeNegative) return false;
        context.Faults.Add(element, $"read {QuantityValue.Shown(element)}: what it measures is never under 0, and so is its limit");
        return true;
    }
}
