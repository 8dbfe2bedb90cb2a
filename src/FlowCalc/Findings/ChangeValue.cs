using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;

namespace FlowCalc.Findings;

/// <summary>A value of a layout document as a change gives it: text, a number, true or false, or an object or a list of these.</summary>
public sealed record ChangeValue
{
    ChangeValue(string json, string words) => (Json, Words) = (json, words);

    /// <summary>The value as JSON.</summary>
    public string Json { get; }

    /// <summary>The value as it stands in a sentence: text without quotation marks, all else as JSON.</summary>
    public string Words { get; }

    /// <summary>Text is a value.</summary>
    /// <param name="text">The text, such as <c>feed</c> or <c>6 mm</c>.</param>
    public static implicit operator ChangeValue(string text) => FromString(text);

    /// <summary>Text.</summary>
    /// <param name="text">The text, such as <c>feed</c> or <c>6 mm</c>.</param>
    /// <returns>The value.</returns>
    /// <exception cref="ArgumentException">The text holds half of a surrogate pair.</exception>
    public static ChangeValue FromString(string text) => new(Quoted(text), text);

    /// <summary>A number.</summary>
    /// <param name="number">A finite number.</param>
    /// <returns>The value.</returns>
    public static ChangeValue FromNumber(double number) => Plain(number.ToString("R", CultureInfo.InvariantCulture));

    /// <summary>True or false.</summary>
    /// <param name="flag">Which.</param>
    /// <returns>The value.</returns>
    public static ChangeValue FromFlag(bool flag) => Plain(flag ? "true" : "false");

    /// <summary>An object.</summary>
    /// <param name="members">Its members; one whose value is null is left out.</param>
    /// <returns>The value.</returns>
    public static ChangeValue FromMembers(params IEnumerable<(string Name, ChangeValue? Value)> members) =>
        Plain($"{{ {string.Join(", ", members.Where(member => member.Value is not null).Select(member => $"{Quoted(member.Name)}: {member.Value!.Json}"))} }}");

    /// <summary>A list.</summary>
    /// <param name="entries">Its entries.</param>
    /// <returns>The value.</returns>
    public static ChangeValue FromEntries(params IEnumerable<ChangeValue> entries) => Plain($"[{string.Join(", ", entries.Select(entry => entry.Json))}]");

    /// <summary><see cref="Words"/>.</summary>
    /// <returns>The words.</returns>
    public override string ToString() => Words;

    static ChangeValue Plain(string json) => new(json, json);

    static string Quoted(string text) => $"\"{JsonEncodedText.Encode(text, JavaScriptEncoder.UnsafeRelaxedJsonEscaping)}\"";
}
