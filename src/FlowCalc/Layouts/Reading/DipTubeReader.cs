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

    const double Hair = 1e-9;

    /// <summary>The dip tube; null where it is missing or wrong.</summary>
    /// <param name="context">The reading.</param>
    /// <param name="element">The dip tube.</param>
    /// <param name="volume">Volume of the bottle, m³; NaN where it is not known.</param>
    /// <param name="shape">Its shape; null where it is not given.</param>
    public static DipTube? Read(ReadingContext context, JsonValue element, double volume, BottleShape? shape)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.DipTube.TryRead(context, element, out var members)) return null;
        members.Requires(context, DipTubeField.Bore, Sizes.Bore);
        members.Requires(context, DipTubeField.Length, Sizes.DipTubeLength);
        TextValue.Read(context, members[DipTubeField.Note], "a note");
        var bore = QuantityValue.Read(context, members[DipTubeField.Bore], Sizes.Bore);
        var length = QuantityValue.Read(context, members[DipTubeField.Length], Sizes.DipTubeLength);
        if (shape is { Length.Meters: var bottleLength } && length > MostBottles * bottleLength)
            context.Faults.Add(members[DipTubeField.Length], $"read {QuantityValue.Shown(members[DipTubeField.Length])}: over twice the bottle's inside length of {bottleLength:0.######} m; {Sizes.DipTubeLength.What} is from the outlet end to its open end");
        var inlet = SpaceValue.Place(context, members[DipTubeField.Inlet]);
        if (inlet is { } end && double.IsFinite(volume + length)) CheckInside(context, members[DipTubeField.Inlet], end, volume, shape, length);
        var follows = TextValue.Flag(context, members[DipTubeField.Follows], "follows");
        if (!members.Has(DipTubeField.Roughness)) context.Assumptions.Add("/supply/bottle/outlet/dipTube/roughness", TubeRoughness.UsualWords, TubeRoughness.UsualSource);
        var roughness = TubeRoughness.Read(context, element, members[DipTubeField.Roughness], bore);
        return double.IsFinite(bore + length + roughness)
            ? new DipTube(Length.FromMeters(bore), Length.FromMeters(roughness), Length.FromMeters(length), inlet is { } place ? [place.X, place.Y, place.Z] : [], follows)
            : null;
    }

    static void CheckInside(ReadingContext context, JsonValue element, in Place inlet, double volume, BottleShape? shape, double dipTube)
    {
        var cylinder = BottleCylinder.Of(volume, shape, dipTube);
        // The document's own digits leave a diameter that is a hair off.
        var radius = Math.Max(cylinder.Radius, shape?.Diameter.Meters / 2 ?? 0) * (1 + Hair);
        var (x, y, z) = (inlet.X.Meters, inlet.Y.Meters, inlet.Z.Meters);
        if (x * x + y * y <= radius * radius && z >= -Hair * cylinder.Length && z <= cylinder.Length * (1 + Hair)) return;
        var taken = shape is null ? ", which is taken without a shape; give the bottle's shape where it is another" : "";
        context.Faults.Add(element, $"read {Math.Sqrt(x * x + y * y):0.######} m off the axis and {z:0.######} m over the base: outside the bottle, {radius:0.######} m in radius and {cylinder.Length:0.######} m long{taken}; an inlet is [x, y, z] from the centre of the base, z towards the outlet end");
    }
}
