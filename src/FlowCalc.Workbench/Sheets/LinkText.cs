using System.Buffers.Text;
using System.IO.Compression;
using System.Security.Cryptography;
using System.Text;

namespace FlowCalc.Workbench.Sheets;

/// <summary>A document as the part of an address behind <c>#</c>: compressed (RFC 1951), with a check against cuts behind it, and in letters that an address may hold (base64url, RFC 4648). It never reaches a server on its own.</summary>
public static class LinkText
{
    /// <summary>Before the document.</summary>
    public const string Mark = "#layout=";

    /// <summary>Length of an address that every program passes on (common practice, no source).</summary>
    public const int SafeLength = 8_000;

    /// <summary>Longest part of an address that is read.</summary>
    public const int MostLength = 2 * Sheet.MostBytes;

    /// <summary>What is told of a longer one.</summary>
    public static string TooLong { get; } = $"The link holds a document of over {Sheet.MostBytes} bytes; the page takes no longer one.";

    // Bytes of a SHA-256 of the text; unpacking alone does not notice that an end is missing.
    const int CheckBytes = 6;

    const string Broken = "The link is broken: the document in it cannot be unpacked. Perhaps a part of it was cut off.";

    /// <summary>The part of an address, with its <c>#</c>.</summary>
    public static string Write(string text)
    {
        using var packed = new MemoryStream();
        var bytes = Encoding.UTF8.GetBytes(text);
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true)) deflate.Write(bytes);
        packed.Write(Check(bytes));
        return Mark + Base64Url.EncodeToString(packed.ToArray());
    }

    /// <summary>The document of an address.</summary>
    /// <param name="hash">The part of the address from <c>#</c> on.</param>
    /// <param name="why">Why there is none, where the address wants to hold one.</param>
    /// <returns>The text; null where there is none.</returns>
    public static string? Read(string hash, out string? why)
    {
        ArgumentNullException.ThrowIfNull(hash);
        why = null;
        if (!hash.StartsWith(Mark, StringComparison.Ordinal)) return null;
        try
        {
            var link = Base64Url.DecodeFromChars(hash.AsSpan(Mark.Length));
            using var packed = new MemoryStream(link, 0, Math.Max(0, link.Length - CheckBytes));
            using var deflate = new DeflateStream(packed, CompressionMode.Decompress);
            // One byte more than the page takes tells a text that is too long; no more is ever unpacked.
            var bytes = new byte[Sheet.MostBytes + 1];
            var length = deflate.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
            if (length > Sheet.MostBytes) why = TooLong;
            else if (!link.AsSpan().EndsWith(Check(bytes.AsSpan(0, length)))) why = Broken;
            else return new UTF8Encoding(false, throwOnInvalidBytes: true).GetString(bytes.AsSpan(0, length));
        }
        catch (Exception broken) when (broken is FormatException or InvalidDataException or DecoderFallbackException)
        {
            why = Broken;
        }
        return null;
    }

    static ReadOnlySpan<byte> Check(ReadOnlySpan<byte> utf8) => SHA256.HashData(utf8).AsSpan(0, CheckBytes);
}
