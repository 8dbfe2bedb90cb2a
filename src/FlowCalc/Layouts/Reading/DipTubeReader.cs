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
    /// <summary>The dip tube; null where it is missing or wrong.</summary>
    public static DipTube? Read(ReadingContext context, JsonElement element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.DipTube.TryRead(context, element, out var members)) return null;
        members.Requires(context, DipTubeField.Bore, Sizes.Bore);
        members.Requires(context, DipTubeField.Length, Sizes.DipTubeLength);
        TextValue.Read(context, members[DipTubeField.Note], "a note");
        var bore = QuantityValue.Read(context, members[DipTubeField.Bore], Sizes.Bore);
        var length = QuantityValue.Read(context, members[DipTubeField.Length], Sizes.DipTubeLength);
        var inlet = SpaceValue.Place(context, members[DipTubeField.Inlet]);
        var follows = TextValue.Flag(context, members[DipTubeField.Follows], "follows");
        if (!members.Has(DipTubeField.Roughness)) context.Assumptions.Add("/supply/bottle/outlet/dipTube/roughness", TubeRoughness.UsualWords, TubeRoughness.UsualSource);
        var roughness = TubeRoughness.Read(context, element, members[DipTubeField.Roughness], bore);
        return double.IsFinite(bore + length + roughness)
            ? new DipTube(Length.FromMeters(bore), Length.FromMeters(roughness), Length.FromMeters(length), inlet is { } place ? [place.X, place.Y, place.Z] : [], follows)
            : null;
    }
}
