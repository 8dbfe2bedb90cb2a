using System.Text.Json.Nodes;
using System.Xml.Linq;
using FlowCalc.Layouts.Editing;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Pictures;

namespace FlowCalc.Workbench.Tests.Drawings;

public sealed class DrawingTextTests
{
    static readonly XNamespace Svg = "http://www.w3.org/2000/svg";

    public static TheoryData<string> Hostile =>
    [
        "<script>alert(1)</script>", "\"><image href=\"x\" onload=\"alert(1)\"/>", "]]>&amp;&lt;", "a/b~c", "صمام الحريق الأمامي", "שסתום קדמי", "🔥🚒👩‍🚒 nozzle", "e\u0301\u0302\u0303 marks", "\u202Edesrever", "\uFFFE\uFFFF end",
        new string('W', 200), string.Concat(Enumerable.Repeat("👨‍👩‍👧", 20)), "火災ノズル" + new string('鋼', 100), " ",
    ];

    [Theory]
    [MemberData(nameof(Hostile))]
    public async Task Any_name_is_shown_as_text_in_well_formed_XML_within_its_room(string name)
    {
        var document = DrawnLayouts.Demo;
        document["title"] = name;
        Rename(document, "T-front", name);
        document["runs"]!.AsArray().Single(run => (string)run!["id"]! == "R4")!["id"] = name;

        foreach (var view in Enum.GetValues<DrawingView>())
        {
            var picture = DrawnLayouts.Draw(DrawnLayouts.Solve(document), view);
            var svg = await DrawnLayouts.XmlAsync(picture);

            Assert.All(svg.DescendantsAndSelf(), element => Assert.Equal(Svg, element.Name.Namespace));
            Assert.Subset(new HashSet<string> { "svg", "g", "title", "desc", "polyline", "polygon", "circle", "text" }, svg.DescendantsAndSelf().Select(element => element.Name.LocalName).ToHashSet());
            Assert.DoesNotContain(svg.DescendantsAndSelf().Attributes(), attribute => attribute.Name.LocalName.StartsWith("on", StringComparison.Ordinal) || attribute.Name.LocalName is "href" or "style");
            var whole = name.Replace('\uFFFE', '\uFFFD').Replace('\uFFFF', '\uFFFD');
            Assert.Contains(svg.Descendants(Svg + "title"), title => title.Value.StartsWith(whole + ": run", StringComparison.Ordinal));
            Assert.Contains(svg.Descendants(Svg + "title"), title => title.Value.StartsWith(whole + ": tee", StringComparison.Ordinal));
            Assert.All(picture.Marks.OfType<Thing>().Where(thing => thing.IsRest).SelectMany(thing => thing.Marks.OfType<Words>()), words => Assert.True(Lettering.Width(words.Text, words.Size, words.IsBold) <= 170, words.Text));
            Assert.Contains(picture.Marks.OfType<Thing>(), thing => thing.Path == EditPath.Of("points", name));
            Assert.Contains(picture.Marks.OfType<Thing>(), thing => thing.Path == EditPath.Of("runs", name));
        }
    }

    [Theory]
    [InlineData("short", "short")]
    [InlineData("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWW", "WWWWWWWWWWW…")]
    [InlineData("👩‍🚒👩‍🚒👩‍🚒👩‍🚒👩‍🚒", "👩‍🚒👩‍🚒…")]
    public void Long_name_is_cut_between_letters_and_ends_in_an_ellipsis(string name, string drawn)
    {
        var shortened = DrawnText.Shortened(name, 9, isBold: true);

        Assert.True(Lettering.Width(shortened, 9, isBold: true) <= DrawnText.Widest);
        Assert.Equal(drawn, shortened);
    }

    [Fact]
    public async Task File_has_a_size_a_view_box_and_a_name()
    {
        var picture = DrawnLayouts.Draw(DrawnLayouts.Solve(DrawnLayouts.Demo));
        var svg = await DrawnLayouts.XmlAsync(picture);

        Assert.Equal(Svg + "svg", svg.Name);
        Assert.Equal(picture.Width, (double)svg.Attribute("width")!, 2);
        Assert.Equal(picture.Height, (double)svg.Attribute("height")!, 2);
        Assert.Equal($"0 0 {(string)svg.Attribute("width")!} {(string)svg.Attribute("height")!}", (string)svg.Attribute("viewBox")!);
        Assert.Equal("Desert raid pickup, seven nozzles in three zones", svg.Element(Svg + "title")!.Value);
    }

    static void Rename(JsonNode document, string from, string to)
    {
        foreach (var point in document["points"]!.AsArray())
            if ((string)point!["id"]! == from) point["id"] = to;
        foreach (var run in document["runs"]!.AsArray())
            foreach (var end in (string[])["from", "to"])
                if ((string)run![end]! == from) run[end] = to;
    }
}
