using System.Runtime.CompilerServices;
using System.Text.Json;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of one object, found by field whatever their order; a missing one has <see cref="JsonValueKind.Undefined"/>.</summary>
ref struct Members<TField>(JsonValue owner, FieldTable<TField> table)
    where TField : struct, Enum
{
    Slots slots;

    /// <summary>The object itself.</summary>
    public readonly JsonValue Owner => owner;

    public readonly JsonValue this[TField field] => owner.At(slots[Unsafe.BitCast<TField, int>(field)]);

    public readonly bool Has(TField field) => slots[Unsafe.BitCast<TField, int>(field)] != 0;

    /// <summary>Whether the member is there; a fault where it is not.</summary>
    public readonly bool Requires(ReadingContext context, TField field, string right)
    {
        if (Has(field)) return true;
        context.Faults.Add(owner, table.Name(field), $"missing: {right}");
        return false;
    }

    /// <summary>Whether the member is there; a fault with its range where it is not.</summary>
    public readonly bool Requires(ReadingContext context, TField field, SizeRange range) =>
        Has(field) || Requires(context, field, $"{range.What}, {range.Words}");

    /// <summary>Whether the member is there; a fault with its range where it is not.</summary>
    public readonly bool Requires(ReadingContext context, TField field, NumberRange range) =>
        Has(field) || Requires(context, field, $"{range.What}, {range.Words}");

    /// <summary>A fault for a member that is there and may not be.</summary>
    public readonly bool Refuses(ReadingContext context, TField field, string why)
    {
        if (!Has(field)) return false;
        context.Faults.Add(this[field], $"read {Said.Value(this[field])}: {why}");
        return true;
    }

    internal void Fill(ReadingContext context)
    {
        foreach (var property in owner.EnumerateObject())
        {
            var raw = property.RawName;
            var index = table.IndexOf(raw);
            if (index < 0)
            {
                if (context.Faults.IsFull) context.Faults.Add(property.Value, "");
                else context.Faults.Add(property.Value, Unknown(context, raw));
            }
            else if (slots[index] == 0) slots[index] = property.Value.Row;
            else context.Faults.Add(property.Value, $"repeated: {table.What} has {table.Names[index]} once");
        }
    }

    readonly string Unknown(ReadingContext context, ReadOnlySpan<byte> raw)
    {
        var name = RawText.Decode(raw) ?? System.Text.Encoding.UTF8.GetString(raw);
        return $"unknown field {Said.Name(name)} of {table.What}{NearNames.Advice(context, name, table.Names, mostListed: table.Names.Length)}";
    }

    // Rows of the values; no member stands in row 0, the document.
    [InlineArray(32)]
    struct Slots
    {
        int first;
    }
}
