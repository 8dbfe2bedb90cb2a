using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Sheets.Changes;

namespace FlowCalc.Workbench.Sheets;

/// <summary>A layout document on the page: its text, sound or not, and what reading it gave.</summary>
public sealed class Sheet
{
    /// <summary>Most points of a layout on the page.</summary>
    public const int MostPoints = 500;

    /// <summary>Longest text of a document on the page, bytes of UTF-8.</summary>
    public const int MostBytes = 2 * 1024 * 1024;

    static readonly JsonDocumentOptions Once = new() { MaxDepth = 64, AllowDuplicateProperties = false };

    readonly JsonObject? root;

    Sheet(string text, JsonObject? root, Layout? layout, IReadOnlyList<LayoutFault> faults)
    {
        (Text, Layout, Faults) = (text, layout, faults);
        this.root = root;
    }

    /// <summary>The document as it is saved, to the byte.</summary>
    public string Text { get; }

    /// <summary>The layout; null where there are faults.</summary>
    public Layout? Layout { get; }

    /// <summary>What is wrong, in the document's order; of a text that is no JSON one fault without a place.</summary>
    public IReadOnlyList<LayoutFault> Faults { get; }

    /// <summary>Whether its parts can be shown and changed one by one: it is an object of JSON in which every name stands once.</summary>
    public bool HasParts => root is not null;

    /// <summary>Reads a text.</summary>
    /// <param name="text">The text.</param>
    /// <param name="cancel">Ends the reading early.</param>
    /// <exception cref="OperationCanceledException">The reading was ended early.</exception>
    public static Sheet Of(string text, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(text);
        var utf8 = Encoding.UTF8.GetBytes(text);
        if (utf8.Length > MostBytes) return new(text, null, null, [new("", $"The text has {utf8.Length} bytes; the page takes {MostBytes}. The service takes larger ones.")]);
        try
        {
            var (layout, faults) = LayoutReader.Read(utf8, new LayoutReaderOptions { MaximumPoints = MostPoints }, cancel);
            return new Sheet(text, PartsOf(text), layout, faults);
        }
        catch (JsonException notJson)
        {
            return new Sheet(text, null, null, [new("", $"This is no JSON: {notJson.Message}")]);
        }
    }

    /// <summary>A changed sheet, read anew.</summary>
    /// <param name="change">Changes the parts; called with a copy.</param>
    /// <exception cref="InvalidOperationException">The sheet has no parts.</exception>
    public Sheet With(Action<JsonObject> change)
    {
        ArgumentNullException.ThrowIfNull(change);
        var copy = (root ?? throw new InvalidOperationException("The sheet has no parts.")).DeepClone().AsObject();
        change(copy);
        return Of(SheetText.Write(copy));
    }

    /// <summary>What stands at a place.</summary>
    /// <param name="pointer">JSON pointer (RFC 6901).</param>
    /// <returns>A copy that may be kept; null where nothing, or null, stands there.</returns>
    public JsonNode? At(string pointer) => root is null ? null : JsonPlace.Find(root, pointer)?.DeepClone();

    /// <summary>What stands at a place as a field shows it: text bare, all else as JSON; empty where nothing stands there.</summary>
    /// <param name="pointer">JSON pointer (RFC 6901).</param>
    public string TextAt(string pointer) => root is null ? "" : JsonPlace.Find(root, pointer) switch
    {
        JsonObject quantity when quantity.Count == 2 && quantity["value"] is JsonValue number && quantity["unit"] is JsonValue unit => $"{number.ToJsonString()} {unit}",
        var node => SheetText.Words(node),
    };

    /// <summary>Names of the members of an object; empty where there is none.</summary>
    /// <param name="pointer">JSON pointer (RFC 6901).</param>
    public IReadOnlyList<string> NamesAt(string pointer) => root is not null && JsonPlace.Find(root, pointer) is JsonObject members ? [.. members.Select(member => member.Key)] : [];

    /// <summary>How many entries a list has; 0 where there is none.</summary>
    /// <param name="pointer">JSON pointer (RFC 6901).</param>
    public int CountAt(string pointer) => root is not null && JsonPlace.Find(root, pointer) is JsonArray entries ? entries.Count : 0;

    /// <summary>Names of the points or the runs, in the document's order; of a run without an id <c>from-to</c>.</summary>
    /// <param name="list"><c>points</c> or <c>runs</c>.</param>
    public IReadOnlyList<string> IdsOf(string list) => root?[list] is JsonArray entries ? [.. entries.Select(PartNames.Of)] : [];

    /// <summary>Faults at a place or within it.</summary>
    /// <param name="pointer">JSON pointer (RFC 6901).</param>
    public IEnumerable<string> FaultsAt(string pointer) =>
        Faults.Where(fault => fault.Pointer == pointer || fault.Pointer.StartsWith(pointer + "/", StringComparison.Ordinal)).Select(fault => fault.Message);

    // The reader has told of names that stand twice; then the text is the only way to change it.
    static JsonObject? PartsOf(string text)
    {
        try
        {
            return JsonNode.Parse(text.TrimStart('\uFEFF'), null, Once) as JsonObject;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
