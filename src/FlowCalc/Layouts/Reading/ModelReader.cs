using System.Text.Json;
using FlowCalc.Agents;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the model.</summary>
enum ModelField
{
    Nozzles,
    NitrogenLag,
    Film,
    Note,
}

/// <summary>Reads the choices of the model; each is checked, whether it moves the answer for this agent or not.</summary>
static class ModelReader
{
    public static readonly Vocabulary NozzleModels = new("delayed", "equilibrium", "frozen");

    static readonly ModelDraft Usual = new(NozzleModel.Delayed, Duration.FromSeconds(Layout.UsualLag), Layout.UsualFilm);

    /// <summary>The choices; the usual ones where they are missing or wrong.</summary>
    public static ModelDraft Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Model.TryRead(context, element, out var members)) return Usual;
        TextValue.Read(context, members[ModelField.Note], "a note");
        var nozzles = Math.Max(0, TextValue.Choice(context, members[ModelField.Nozzles], NozzleModels));
        var film = NumberValue.Read(context, members[ModelField.Film], Sizes.Film);
        return new((NozzleModel)nozzles, Lag(context, members[ModelField.NitrogenLag]), double.IsFinite(film) ? film : Layout.UsualFilm);
    }

    static Duration? Lag(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.String && element.Unquoted.SequenceEqual("frozen"u8)) return null;
        var lag = QuantityValue.Read(context, element, Sizes.NitrogenLag);
        return double.IsFinite(lag) ? Duration.FromSeconds(lag) : Usual.NitrogenLag;
    }
}

/// <summary>The choices of the model.</summary>
/// <param name="Nozzles">How far an agent boils in a nozzle.</param>
/// <param name="NitrogenLag">Time in which nitrogen comes out; null for never.</param>
/// <param name="Film">Part of the liquid left as a film.</param>
readonly record struct ModelDraft(NozzleModel Nozzles, Duration? NitrogenLag, double Film);
