using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a joint.</summary>
enum JointField
{
    Insertion,
    CentreToStop,
    Note,
}

/// <summary>Reads how a run's tube ends in the fitting of a point.</summary>
static class JointReader
{
    /// <summary>The joint; one with nothing given where it is missing or wrong.</summary>
    public static Joint Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Joint.TryRead(context, element, out var members)) return default;
        TextValue.Read(context, members[JointField.Note], "a note");
        return Of(context, members[JointField.Insertion], members[JointField.CentreToStop]);
    }

    /// <summary>A joint of its two lengths, which need not be there.</summary>
    public static Joint Of(ReadingContext context, JsonValue insertion, JsonValue centreToStop) =>
        new(LengthValue.Read(context, insertion, Sizes.Insertion), LengthValue.Read(context, centreToStop, Sizes.CentreToStop));
}
