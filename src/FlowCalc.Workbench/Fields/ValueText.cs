using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Fields;

/// <summary>Between what a field shows and what the document holds. What is typed is never changed, so that it can be shown again and a fault be told of it as it is.</summary>
static class ValueText
{
    static readonly JsonDocumentOptions Once = new() { AllowDuplicateProperties = false };

    /// <summary>What stands at a place, as the field shows it.</summary>
    public static string Of(Sheet sheet, string pointer, ValueForm form) => (form, sheet.At(pointer)) switch
    {
        (ValueForm.List, JsonArray entries) => Line(entries),
        (ValueForm.Lines, JsonArray lines) => string.Join('\n', lines.Select(line => line is JsonArray entries ? Line(entries) : SheetText.Words(line))),
        // Bare text that would be read as something else, such as none at all, keeps its quotes.
        (ValueForm.Json, JsonValue text) when text.GetValueKind() == JsonValueKind.String && !JsonNode.DeepEquals(text, Read(text.GetValue<string>(), ValueForm.Json)) => text.ToJsonString(),
        _ => sheet.TextAt(pointer),
    };

    /// <summary>The same, but to the letter what was typed there while the document holds the value of that.</summary>
    public static string Of(Sheet sheet, string pointer, ValueForm form, string? typed) =>
        typed is not null && JsonNode.DeepEquals(sheet.At(pointer), Read(typed, form)) ? typed : Of(sheet, pointer, form);

    /// <summary>The value of what was typed; null for nothing.</summary>
    public static JsonNode? Read(string text, ValueForm form)
    {
        if (text.Length == 0) return null;
        return form switch
        {
            ValueForm.Number => Parsed(text) is JsonValue number && number.GetValueKind() == JsonValueKind.Number ? number : JsonValue.Create(text),
            ValueForm.List => List(text),
            ValueForm.Lines => new JsonArray([.. text.Split('\n').Select(List)]),
            ValueForm.Json => Parsed(text) ?? JsonValue.Create(text),
            _ => JsonValue.Create(text),
        };
    }

    static JsonNode List(string text) => new JsonArray([.. text.Split(',').Select((part, at) => (JsonNode)JsonValue.Create(at == 0 ? part : part.StartsWith(' ') ? part[1..] : part))]);

    static string Line(JsonArray entries) => string.Join(", ", entries.Select(SheetText.Words));

    static JsonNode? Parsed(string text)
    {
        try
        {
            return JsonNode.Parse(text, null, Once);
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
