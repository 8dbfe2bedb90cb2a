using System.Text.Json;
using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>A value of a document; the default stands for one that is missing, with <see cref="JsonValueKind.Undefined"/>.</summary>
readonly struct JsonValue(JsonTree tree, int row)
{
    public JsonValueKind ValueKind => tree is null ? JsonValueKind.Undefined : tree.Kind(row);

    /// <summary>Its place among the values of the document; 0 for the document itself.</summary>
    public int Row => row;

    /// <summary>Where it starts in the document's text.</summary>
    public int Start => tree.Start(row);

    /// <summary>The text of a value that is neither array nor object, as the document has it.</summary>
    public ReadOnlySpan<byte> Raw => tree.Raw(row);

    /// <summary>The text between the quotes of a string, as the document has it.</summary>
    public ReadOnlySpan<byte> Unquoted => tree.Raw(row)[1..^1];

    /// <summary>Another value of the same document by its place; the missing one for 0.</summary>
    public JsonValue At(int other) => other == 0 ? default : new(tree, other);

    public int GetArrayLength() => tree.Entries(row);

    /// <summary>An entry of an array.</summary>
    public JsonValue this[int index]
    {
        get
        {
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual((uint)index, (uint)tree.Entries(row));
            var entry = row + 1;
            for (; index > 0; index--) entry = tree.Behind(entry);
            return new(tree, entry);
        }
    }

    public EntryEnumerator EnumerateArray() => new(tree, row);

    public MemberEnumerator EnumerateObject() => new(tree, row);

    /// <summary>A number; infinite where it is too large for one.</summary>
    public bool TryGetDouble(out double value) => NumberText.TryScan(Raw, out value, out _);

    /// <summary>The last member of that name.</summary>
    public bool TryGetProperty(string name, out JsonValue value)
    {
        value = default;
        foreach (var member in EnumerateObject())
            if (RawText.Decode(member.RawName) == name) value = member.Value;
        return value.ValueKind is not JsonValueKind.Undefined;
    }

    /// <summary>A member of an object.</summary>
    public readonly ref struct Member(JsonTree tree, int row)
    {
        /// <summary>Its name, as the document has it between the quotes.</summary>
        public ReadOnlySpan<byte> RawName => tree.Raw(row);

        public JsonValue Value => new(tree, row + 1);
    }

    /// <summary>Goes through the members of an object.</summary>
    public ref struct MemberEnumerator(JsonTree tree, int owner)
    {
        readonly int behind = tree.Behind(owner);
        int row = -1;

        public readonly Member Current => new(tree, row);

        public readonly MemberEnumerator GetEnumerator() => this;

        public bool MoveNext()
        {
            row = row < 0 ? owner + 1 : tree.Behind(row + 1);
            return row < behind;
        }
    }

    /// <summary>Goes through the entries of an array.</summary>
    public ref struct EntryEnumerator(JsonTree tree, int owner)
    {
        readonly int behind = tree.Behind(owner);
        int row = -1;

        public readonly JsonValue Current => new(tree, row);

        public readonly EntryEnumerator GetEnumerator() => this;

        public bool MoveNext()
        {
            row = row < 0 ? owner + 1 : tree.Behind(row);
            return row < behind;
        }
    }
}
