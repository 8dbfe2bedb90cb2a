namespace FlowCalc.Quantities;

/// <summary>Finds a unit's spelling by its UTF-8 bytes without making a string: a small hash table with open addressing.</summary>
sealed class SpellingIndex
{
    readonly UnitSpelling?[] slots;

    public SpellingIndex(IEnumerable<UnitEntry> entries)
    {
        UnitSpelling[] spellings = [.. entries.SelectMany(e => e.Twins.Prepend(e.Symbol).Select(text => new UnitSpelling(text, e)))];
        var size = 16;
        while (size < 4 * spellings.Length) size *= 2;
        slots = new UnitSpelling?[size];
        foreach (var spelling in spellings) Add(spelling);
    }

    /// <summary>The spelling that these bytes are, or null.</summary>
    public UnitSpelling? Find(ReadOnlySpan<byte> utf8)
    {
        for (var slot = Start(utf8); slots[slot] is { } spelling; slot = (slot + 1) & (slots.Length - 1))
            if (utf8.SequenceEqual(spelling.Utf8)) return spelling;
        return null;
    }

    void Add(UnitSpelling spelling)
    {
        var slot = Start(spelling.Utf8);
        while (slots[slot] is { } other)
        {
            if (other.Text == spelling.Text)
                throw new InvalidOperationException($"Two units of {spelling.Entry.Kind} are spelled {spelling.Text}.");
            slot = (slot + 1) & (slots.Length - 1);
        }
        slots[slot] = spelling;
    }

    // Hash: Fowler, Noll, Vo, FNV-1a, 32 bits (RFC 9923).
    int Start(ReadOnlySpan<byte> utf8)
    {
        var hash = 2166136261u;
        foreach (var octet in utf8) hash = (hash ^ octet) * 16777619u;
        return (int)((hash ^ (hash >> 15)) & (uint)(slots.Length - 1));
    }
}
