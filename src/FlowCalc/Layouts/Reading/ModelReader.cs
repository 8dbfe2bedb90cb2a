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

/// <summary>Checks the choices of the discharge's model, on which the flow of a liquid does not hang.</summary>
static class ModelReader
{
    public static readonly Vocabulary NozzleModels = new("delayed", "equilibrium", "frozen");

    /// <summary>Adds what is wrong with them.</summary>
    public static void Check(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Model.TryRead(context, element, out var members)) return;
        TextValue.Read(context, members[ModelField.Note], "a note");
        TextValue.Choice(context, members[ModelField.Nozzles], NozzleModels);
        NumberValue.Read(context, members[ModelField.Film], Sizes.Film);
        var lag = members[ModelField.NitrogenLag];
        if (lag.ValueKind is JsonValueKind.String && lag.Unquoted.SequenceEqual("frozen"u8)) return;
        QuantityValue.Read(context, lag, Sizes.NitrogenLag);
    }
}
