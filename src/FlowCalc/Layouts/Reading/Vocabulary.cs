using System.Collections.Immutable;
using System.Text;

namespace FlowCalc.Layouts.Reading;

/// <summary>A closed list of words, found by their UTF-8 bytes.</summary>
sealed class Vocabulary
{
    readonly byte[][] utf8;
    readonly byte[] guesses = new byte[64];

    public Vocabulary(params ImmutableArray<string> words)
    {
        Words = words;
        utf8 = [.. words.Select(Encoding.UTF8.GetBytes)];
        for (var i = 0; i < utf8.Length; i++) guesses[Guess(utf8[i])] = (byte)i;
        Listed = string.Join(", ", words);
    }

    public ImmutableArray<string> Words { get; }

    /// <summary>The words with commas, for a message.</summary>
    public string Listed { get; }

    /// <summary>Place of the word that the text between two quotes stands for; −1 for none.</summary>
    public int IndexOf(ReadOnlySpan<byte> raw)
    {
        if (raw.IsEmpty) return -1;
        var guess = guesses[Guess(raw)];
        if (raw.SequenceEqual(utf8[guess])) return guess;
        for (var i = 0; i < utf8.Length; i++)
            if (raw.SequenceEqual(utf8[i])) return i;
        return raw.Contains((byte)'\\') && RawText.Decode(raw) is { } text ? Words.IndexOf(text) : -1;
    }

    // Ends and length tell nearly all words of a list apart; where they do not, the whole list is gone through.
    static int Guess(ReadOnlySpan<byte> word) => (word[0] + 5 * word[^1] + 11 * word.Length) & 63;
}
