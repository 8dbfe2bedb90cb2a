using System.Collections.Immutable;
using System.Text;

namespace FlowCalc.Layouts.Reading;

/// <summary>A closed list of words, found by their UTF-8 bytes.</summary>
sealed class Vocabulary
{
    readonly byte[][] utf8;

    public Vocabulary(params ImmutableArray<string> words)
    {
        Words = words;
        utf8 = [.. words.Select(Encoding.UTF8.GetBytes)];
        Listed = string.Join(", ", words);
    }

    public ImmutableArray<string> Words { get; }

    /// <summary>The words with commas, for a message.</summary>
    public string Listed { get; }

    /// <summary>Place of the word that the text between two quotes stands for; −1 for none.</summary>
    public int IndexOf(ReadOnlySpan<byte> raw)
    {
        for (var i = 0; i < utf8.Length; i++)
            if (raw.SequenceEqual(utf8[i])) return i;
        return raw.Contains((byte)'\\') && RawText.Decode(raw) is { } text ? Words.IndexOf(text) : -1;
    }
}
