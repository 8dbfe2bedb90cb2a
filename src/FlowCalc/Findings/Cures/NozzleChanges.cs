using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Losses;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings.Cures;

/// <summary>A nozzle exchanged for another of the document's, or drilled to another size.</summary>
static class NozzleChanges
{
    /// <summary>A nozzle exchanged for the document's next ones larger or smaller, the nearest first.</summary>
    public static IEnumerable<LayoutChange> Exchanged(JudgedLayout judged, int point, bool larger, int most)
    {
        var nozzle = (Nozzle)judged.Layout.Points[point];
        var types = judged.Layout.Nozzles.OrderBy(type => type.KFactor);
        var fitting = larger
            ? types.Where(type => type.KFactor > nozzle.KFactor * (1 + 1e-9))
            : types.Where(type => type.KFactor < nozzle.KFactor * (1 - 1e-9)).Reverse();
        foreach (var type in fitting.Take(most))
        {
            var changed = nozzle with { KFactor = type.KFactor, Orifice = type.Orifice, Type = type.Name, PressureRange = nozzle.StatesRange ? nozzle.PressureRange : type.PressureRange };
            yield return Change(judged, point, nozzle, changed, [.. Own(judged, nozzle), new CureChange(At(nozzle, "nozzle"), nozzle.Type is { } name ? ChangeValue.FromString(name) : null, type.Name)], Wording.Id(type.Name));
        }
    }

    /// <summary>A nozzle of another size: its holes as wide as there are drills, or another K-factor in three digits.</summary>
    /// <param name="judged">The layout.</param>
    /// <param name="point">Index of the nozzle's point.</param>
    /// <param name="ratio">How many times the K-factor is wanted.</param>
    /// <returns>Null where it would stay as it is, or has no size that a document may give.</returns>
    public static LayoutChange? Sized(JudgedLayout judged, int point, double ratio)
    {
        var nozzle = (Nozzle)judged.Layout.Points[point];
        var changed = nozzle with { Type = null, StatesRange = nozzle.PressureRange is not null };
        string member;
        ChangeValue value;
        string words;
        if (nozzle.Orifice is { } holes)
        {
            var drilled = SizeText.Drilled(holes.Diameter.Meters * Math.Sqrt(ratio), judged.Units);
            // The drill next to a size may be on the wrong side of it.
            if (drilled.Si > holes.Diameter.Meters != ratio > 1 || !Layouts.Reading.Sizes.Hole.Holds(drilled.Si)) return null;
            var orifice = holes with { Diameter = Length.FromMeters(drilled.Si) };
            changed = changed with { Orifice = orifice, KFactor = KFactor.FromEffectiveArea(Orifice.EffectiveArea(drilled.Si, holes.DischargeCoefficient, holes.Count)) };
            (member, value, words) = nozzle.Type is null ? ("orifice/diameter", drilled.Text, $"an orifice of {drilled.Text}") : ("orifice", Said(orifice, drilled.Text), $"an orifice of {drilled.Text}");
        }
        else
        {
            var size = SizeText.Of(nozzle.KFactor * ratio, QuantityKind.KFactor, judged.Units, 3);
            if (size.Si > nozzle.KFactor != ratio > 1 || !Layouts.Reading.Sizes.KFactor.Holds(size.Si)) return null;
            changed = changed with { KFactor = size.Si };
            (member, value, words) = ("kFactor", size.Text, $"a K-factor of {size.Text}");
        }
        if (Math.Abs(changed.KFactor / nozzle.KFactor - 1) < 1e-9) return null;
        var own = nozzle.Type is null ? ChangeValue.FromString(Size(judged.Units, nozzle)) : null;
        return Change(judged, point, nozzle, changed, [.. Released(nozzle), new CureChange($"{EditPath.Of("points", nozzle.Id)}/{member}", own, value)], words);
    }

    static LayoutChange Change(JudgedLayout judged, int point, Nozzle nozzle, Nozzle changed, ImmutableArray<CureChange> changes, string words) => new(
        changes, $"{words} instead of {Wording.Id(nozzle.Type ?? Size(judged.Units, nozzle))} at {Wording.Id(nozzle.Id)}",
        judged.Layout with { Points = judged.Layout.Points.SetItem(point, changed) }, 0, LayoutChange.StepOf(nozzle.KFactor, changed.KFactor), null);

    // A nozzle has one of type, orifice and K-factor: what it has of its own goes.
    static ImmutableArray<CureChange> Own(JudgedLayout judged, Nozzle nozzle) =>
        nozzle.Type is not null ? [] : [new CureChange(At(nozzle, nozzle.Orifice is null ? "kFactor" : "orifice"), Size(judged.Units, nozzle), null)];

    // What is no longer one of the document's nozzles keeps the range that it had by its name.
    static IEnumerable<CureChange> Released(Nozzle nozzle)
    {
        if (nozzle.Type is not { } type) yield break;
        yield return new CureChange(At(nozzle, "nozzle"), type, null);
        if (!nozzle.StatesRange && nozzle.PressureRange is { } range)
            yield return new CureChange(At(nozzle, "pressureRange"), null, ChangeValue.FromEntries(SizeText.Absolute(range.Least.Pascals), SizeText.Absolute(range.Most.Pascals)));
    }

    static ChangeValue Said(NozzleOrifice orifice, string diameter) => ChangeValue.FromMembers(
        ("diameter", diameter), ("dischargeCoefficient", ChangeValue.FromNumber(orifice.DischargeCoefficient)), ("count", orifice.Count == 1 ? null : ChangeValue.FromNumber(orifice.Count)));

    static string Size(UnitSystem units, Nozzle nozzle) =>
        nozzle.Orifice is { } holes ? Wording.Of(holes.Diameter, units) : $"K {Wording.Of(nozzle.KFactor, QuantityKind.KFactor, units)}";

    static string At(Nozzle nozzle, string member) => EditPath.Of("points", nozzle.Id, member);
}
