using System.Text.Json;
using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a dip tube.</summary>
enum DipTubeField
{
    Bore,
    Roughness,
    Length,
    Inlet,
    Follows,
    Note,
}

/// <summary>Reads a dip tube.</summary>
static class DipTubeReader
{
    // A dip tube may bend to a side or coil at the bottom; one of more than this many bottles is a slip of the pen.
    const double MostBottles = 2;

    /// <summary>The dip tube; null where it is missing or wrong.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The dip tube.</param>
    /// <param name="bottleLength">Inside length of the bottle, m; NaN where it is not known.</param>
    public static DipTube? Read(ReadingContext context, JsonValue element, double bottleLength)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.DipTube.TryRead(context, element, out var members)) return null;
        members.Requires(context, DipTubeField.Bore, Sizes.Bore);
        members.Requires(context, DipTubeField.Length, Sizes.DipTubeLength);
        TextValue.Read(context, members[DipTubeField.Note], "a note");
        var bore = QuantityValue.Read(context, members[DipTubeField.Bore], Sizes.Bore);
        var length = QuantityValue.Read(context, members[DipTubeField.Length], Sizes.DipTubeLength);
        if (length > MostBottles * bottleLength)
            context.Faults.Add(members[DipTubeField.Length], $"read {QuantityValue.Shown(members[DipTubeField.Length])}: over twice the bottle's inside length of {bottleLength:0.######} m; {Sizes.DipTubeLength.What} is from the outlet end to its open end");
        var inlet = SpaceValue.Place(context, members[DipTubeField.Inlet]);
        var follows = TextValue.Flag(context, members[DipTubeField.Follows], "follows");
        if (!members.Has(DipTubeField.Roughness)) context.Assumptions.Add("/supply/bottle/outlet/dipTube/roughness", TubeRoughness.UsualWords, TubeRoughness.UsualSource);
        var roughness = TubeRoughness.Read(context, element, members[DipTubeField.Roughness], bore);
        return double.IsFinite(bore + length + roughness)
            ? new DipTube(Length.FromMeters(bore), Length.FromMeters(roughness), Length.FromMeters(length), inlet is { } place ? [place.X, place.Y, place.Z] : [], follows)
            : null;
    }
}
