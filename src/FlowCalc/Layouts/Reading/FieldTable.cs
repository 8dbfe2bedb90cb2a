using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>The fields that one kind of object may have: the members of an enumeration, in lower camel case.</summary>
/// <param name="what">The object with its article, such as <c>a run</c>.</param>
sealed class FieldTable<TField>(string what) : IFieldTable
    where TField : struct, Enum
{
    readonly Vocabulary names = new([.. Enum.GetNames<TField>().Select(Spelling)]);

    /// <summary>The object with its article.</summary>
    public string What => what;

    public ImmutableArray<string> Names => names.Words;

    public string Listed => names.Listed;

    /// <summary>The field's name in the document.</summary>
    public string Name(TField field) => names.Words[Unsafe.BitCast<TField, int>(field)];

    /// <summary>Place of a field by its name between quotes; −1 for none.</summary>
    public int IndexOf(ReadOnlySpan<byte> rawName) => names.IndexOf(rawName);

    /// <summary>Sorts an object's members by field; unknown and repeated ones are faults.</summary>
    /// <returns>Whether it is an object at all.</returns>
    public bool TryRead(ReadingContext context, JsonValue element, out Members<TField> members)
    {
        members = new Members<TField>(element, this);
        if (element.ValueKind is not JsonValueKind.Object)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: {what} is an object with {Listed}");
            return false;
        }
        members.Fill(context);
        return true;
    }

    /// <summary>The same for an object that may be left out; a fault for what is there and none.</summary>
    /// <returns>Whether it is there and an object.</returns>
    public bool TryReadOptional(ReadingContext context, JsonValue element, out Members<TField> members)
    {
        members = new Members<TField>(element, this);
        return element.ValueKind is not JsonValueKind.Undefined && TryRead(context, element, out members);
    }

    static string Spelling(string member) => member == "Schema" ? "$schema" : char.ToLowerInvariant(member[0]) + member[1..];
}
