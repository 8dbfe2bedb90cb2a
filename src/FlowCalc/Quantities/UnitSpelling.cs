using System.Text;

namespace FlowCalc.Quantities;

/// <summary>One way to write a unit of the table, as text and as the bytes that a document holds.</summary>
sealed record UnitSpelling(string Text, UnitEntry Entry)
{
    readonly byte[] bytes = Encoding.UTF8.GetBytes(Text);

    public ReadOnlySpan<byte> Utf8 => bytes;
}
