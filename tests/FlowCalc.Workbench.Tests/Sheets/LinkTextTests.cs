using System.Buffers.Text;
using System.IO.Compression;
using CsCheck;
using FlowCalc.Workbench.Sheets;

namespace FlowCalc.Workbench.Tests.Sheets;

public sealed class LinkTextTests
{
    [Fact]
    public void Any_text_comes_back_to_the_letter_and_its_link_needs_no_escaping() => Gen.String[0, 400].Where(IsSound).Sample(text =>
    {
        var link = LinkText.Write(text);
        Assert.All(link[LinkText.Mark.Length..], letter => Assert.True(char.IsAsciiLetterOrDigit(letter) || letter is '-' or '_'));
        Assert.Equal(text, LinkText.Read(link, out var why));
        Assert.Null(why);
    }, iter: 500);

    [Theory]
    [InlineData("\uFEFF{\r\n\t\"format\": 1 }\r\n")]
    [InlineData("")]
    [InlineData("°C µm ½ 🧯")]
    public void Marks_line_ends_and_signs_beyond_ascii_come_back(string text) => Assert.Equal(text, LinkText.Read(LinkText.Write(text), out _));

    [Fact]
    public void Demo_fits_into_a_link_that_every_program_passes_on() => Assert.InRange(LinkText.Write(Documents.Example("raid-pickup")).Length, 1, LinkText.SafeLength);

    [Fact]
    public void Link_cut_anywhere_is_told_and_never_gives_half_a_document()
    {
        var link = LinkText.Write(Documents.Example("raid-pickup"));
        for (var length = LinkText.Mark.Length; length < link.Length; length++)
        {
            Assert.Null(LinkText.Read(link[..length], out var why));
            Assert.Contains("cut off", why, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Link_that_unpacks_to_more_than_the_page_takes_is_refused_without_unpacking_it()
    {
        using var packed = new MemoryStream();
        using (var deflate = new DeflateStream(packed, CompressionLevel.SmallestSize, leaveOpen: true))
            for (var part = 0; part < 400; part++) deflate.Write(new byte[1024 * 1024]);
        var bomb = LinkText.Mark + Base64Url.EncodeToString(packed.ToArray());
        var before = GC.GetAllocatedBytesForCurrentThread();

        Assert.Null(LinkText.Read(bomb, out var why));

        Assert.Contains("no longer one", why, StringComparison.Ordinal);
        Assert.InRange(GC.GetAllocatedBytesForCurrentThread() - before, 0, 16 * 1024 * 1024);
    }

    [Theory]
    [InlineData("#layout=%%%")]
    [InlineData("#layout=AAAA")]
    [InlineData("#layout=this-is-no-packed-text")]
    public void Rubbish_behind_the_mark_is_told(string hash)
    {
        Assert.Null(LinkText.Read(hash, out var why));
        Assert.NotNull(why);
    }

    [Theory]
    [InlineData("")]
    [InlineData("#")]
    [InlineData("#answers")]
    public void Address_that_wants_to_hold_no_document_is_nobodys_fault(string hash)
    {
        Assert.Null(LinkText.Read(hash, out var why));
        Assert.Null(why);
    }

    // Halves of pairs are no text.
    static bool IsSound(string text)
    {
        for (var at = 0; at < text.Length; at++)
        {
            if (!char.IsSurrogate(text[at])) continue;
            if (at + 1 >= text.Length || !char.IsSurrogatePair(text[at], text[at + 1])) return false;
            at++;
        }
        return true;
    }
}
