using System.Globalization;

namespace FlowCalc.Tests.Layouts;

/// <summary>A row of generated numbers that a builder takes its choices from, round and round; the same numbers give the same choices.</summary>
public sealed class Tape(uint[] numbers)
{
    int next;

    /// <summary>A whole number from 0 to under <paramref name="count"/>.</summary>
    public int Below(int count) => (int)(Draw() % (uint)count);

    /// <summary>True about once in <paramref name="times"/>.</summary>
    public bool Once(int times) => Below(times) == 0;

    /// <summary>A number in a range, with at most four digits, as text.</summary>
    public string Number(double low, double high) => (low + (high - low) * (Draw() % 10_000) / 9_999.0).ToString("G4", CultureInfo.InvariantCulture);

    /// <summary>One of some texts.</summary>
    public string Of(params ReadOnlySpan<string> texts) => texts[Below(texts.Length)];

    // The place in the tape is mixed in, so that a short tape does not repeat itself with its period.
    uint Draw()
    {
        var mixed = (numbers[next % numbers.Length] + (uint)next) * 2_654_435_761u;
        next++;
        return mixed ^ (mixed >> 15);
    }
}
