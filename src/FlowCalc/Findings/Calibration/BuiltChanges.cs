using System.Collections.Immutable;
using FlowCalc.Findings.Cures;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;
using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Findings.Calibration;

/// <summary>What makes the document of the layout as drawn that of the system as built.</summary>
static class BuiltChanges
{
    // Enough to read back what was solved: sizes have six.
    const int Digits = 12;

    public static ImmutableArray<CureChange> Of(JudgedCalibration judged) => judged.Best.Kind switch
    {
        CauseKind.Run => [Loss(judged)],
        CauseKind.Nozzles => [.. judged.Best.Unknowns.SelectMany(unknown => Nozzles(judged, unknown.Nozzles!)), .. Shares(judged)],
        CauseKind.Roughness or CauseKind.Bore => [.. Tubes(judged), .. OwnBores(judged)],
        _ => [],
    };

    static CureChange Loss(JudgedCalibration judged)
    {
        var (drawn, built) = (judged.Layout.Runs[judged.Best.Run], judged.Result.Built!.Runs[judged.Best.Run]);
        return new(EditPath.Of("runs", drawn.Id, "lossCoefficient"), drawn.LossCoefficient > 0 ? ChangeValue.FromNumber(drawn.LossCoefficient) : null, ChangeValue.FromNumber(built.LossCoefficient));
    }

    static IEnumerable<CureChange> Nozzles(JudgedCalibration judged, NozzleGroup group)
    {
        foreach (var point in group.Type is null ? group.Points : [group.Points[0]])
        {
            var (drawn, built) = ((Nozzle)judged.Layout.Points[point], (Nozzle)judged.Result.Built!.Points[point]);
            var (list, name) = group.Type is { } type ? ("nozzles", type) : ("points", drawn.Id);
            yield return drawn.Orifice is { } holes
                ? new($"{EditPath.Of(list, name)}/orifice/diameter", Size(judged, holes.Diameter), Size(judged, built.Orifice!.Diameter))
                : new(EditPath.Of(list, name, "kFactor"), Text(judged, drawn.KFactor, QuantityKind.KFactor), Text(judged, built.KFactor, QuantityKind.KFactor));
        }
    }

    // A nozzle without a share of its own wants one by its K-factor: that which was drawn is said, or the nozzle as built would be held against itself.
    static IEnumerable<CureChange> Shares(JudgedCalibration judged)
    {
        for (var at = 0; at < judged.Layout.Points.Length; at++)
            if (judged.Layout.Points[at] is Nozzle { Share: null } drawn)
                yield return new(EditPath.Of("points", drawn.Id, "share"), null, ChangeValue.FromNumber(((Nozzle)judged.Result.Built!.Points[at]).Share!.Value));
    }

    // An id of the catalogue that the document does not describe itself becomes a tube of the document of that name, which stands before the catalogue's.
    static IEnumerable<CureChange> Tubes(JudgedCalibration judged)
    {
        var drawn = judged.Layout.Tubes;
        var used = Enumerable.Range(0, drawn.Length).Where(at => judged.Layout.Runs.Any(run => run.Tube.Name == drawn[at].Name)).ToArray();
        var hasOwn = drawn.Any(tube => !IsOfCatalogue(judged, tube));
        var own = used.Where(at => !IsOfCatalogue(judged, drawn[at])).SelectMany(at => Own(judged, drawn[at], judged.Result.Built!.Tubes[at]));
        var ofCatalogue = used.Where(at => IsOfCatalogue(judged, drawn[at])).Select(at => (drawn[at].Name!, Described(judged, judged.Result.Built!.Tubes[at]))).ToArray();
        if (hasOwn || ofCatalogue.Length == 0) return own.Concat(ofCatalogue.Select(tube => new CureChange(EditPath.Of("tubes", tube.Item1), null, tube.Item2)));
        return [new CureChange("tubes", null, ChangeValue.FromMembers(ofCatalogue.Select(tube => (tube.Item1, (ChangeValue?)tube.Item2))))];
    }

    static bool IsOfCatalogue(JudgedCalibration judged, Tube tube) =>
        TubeCatalogue.Find(tube.Name!) is { } known && TubeReader.Of(known, judged.Ambient) == tube;

    static IEnumerable<CureChange> Own(JudgedCalibration judged, Tube drawn, Tube built)
    {
        string At(string member) => EditPath.Of("tubes", drawn.Name!, member);
        if (judged.Best.Kind == CauseKind.Roughness) yield return new(At("roughness"), Size(judged, drawn.Roughness), Size(judged, built.Roughness));
        else if (drawn.OutsideDiameter is { } outside) yield return new(At("wall"), Size(judged, (outside - drawn.Bore) / 2), Size(judged, (outside - built.Bore) / 2));
        else yield return new(At("bore"), Size(judged, drawn.Bore), Size(judged, built.Bore));
    }

    static ChangeValue Described(JudgedCalibration judged, Tube tube) => ChangeValue.FromMembers(
        ("outsideDiameter", Size(judged, tube.OutsideDiameter!.Value)), ("wall", Size(judged, (tube.OutsideDiameter.Value - tube.Bore) / 2)), ("roughness", Size(judged, tube.Roughness)),
        ("minimumBendRadius", tube.MinimumBendRadius is { } radius ? Size(judged, radius) : null),
        ("workingPressure", tube.WorkingPressure is { } pressure ? ChangeValue.FromString(SizeText.Absolute(pressure.Pascals)) : null),
        ("material", tube.Material is { } material ? ChangeValue.FromString(material) : null));

    static IEnumerable<CureChange> OwnBores(JudgedCalibration judged)
    {
        for (var at = 0; at < judged.Layout.Runs.Length; at++)
        {
            var (drawn, built) = (judged.Layout.Runs[at], judged.Result.Built!.Runs[at]);
            if (drawn.Tube.Name is not null) continue;
            var (member, from, to) = judged.Best.Kind == CauseKind.Roughness ? ("roughness", drawn.Tube.Roughness, built.Tube.Roughness) : ("bore", drawn.Tube.Bore, built.Tube.Bore);
            yield return new(EditPath.Of("runs", drawn.Id, member), Size(judged, from), Size(judged, to));
        }
    }

    static ChangeValue Size(JudgedCalibration judged, Length length) => Text(judged, length.Meters, QuantityKind.Length);

    static ChangeValue Text(JudgedCalibration judged, double si, QuantityKind kind) => SizeText.Of(si, kind, judged.Units, Digits).Text;
}
