using System.Text;
using System.Text.Json;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>What the document said, fit to stand in a message: capped and escaped.</summary>
static class Said
{
    /// <summary>A value as the document has it; an object or an array by that word.</summary>
    public static string Value(JsonValue element) => element.ValueKind switch
    {
        JsonValueKind.Object => "an object",
        JsonValueKind.Array => "an array",
        JsonValueKind.String => Echo.Quoted(element.Unquoted),
        _ => Echo.Plain(element.Raw),
    };

    /// <summary>How many entries a list has; of what is none, the value.</summary>
    public static string Entries(JsonValue element) => element.ValueKind is JsonValueKind.Array ? $"{element.GetArrayLength()} entries" : Value(element);

    /// <summary>A name in quotes.</summary>
    public static string Name(string name) => $"'{Plain(name)}'";

    /// <summary>A name without quotes.</summary>
    public static string Plain(string name) => Echo.Plain(Encoding.UTF8.GetBytes(name));
}
