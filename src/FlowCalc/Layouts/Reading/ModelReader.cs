using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the model.</summary>
enum ModelField
{
    Nozzles,
    NitrogenLag,
    Film,
    Note,
}

/// <summary>Reads the choices of the discharge's model; those on which no discharge of a liquid hangs are only checked.</summary>
static class ModelReader
{
    public static readonly Vocabulary NozzleModels = new("delayed", "equilibrium", "frozen");

    /// <summary>Part of the liquid left as a film; the usual one where it is missing or wrong.</summary>
    public static double Film(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Model.TryRead(context, element, out var members)) return Layout.UsualFilm;
        TextValue.Read(context, members[ModelField.Note], "a note");
        TextValue.Choice(context, members[ModelField.Nozzles], NozzleModels);
        CheckLag(context, members[ModelField.NitrogenLag]);
        var film = NumberValue.Read(context, members[ModelField.Film], Sizes.Film);
        return double.IsFinite(film) ? film : Layout.UsualFilm;
    }

    static void CheckLag(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.String && element.Unquoted.SequenceEqual("frozen"u8)) return;
        QuantityValue.Read(context, element, Sizes.NitrogenLag);
    }
}
