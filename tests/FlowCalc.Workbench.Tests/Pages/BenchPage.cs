using System.Text;
using FlowCalc.Workbench.Sheets;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

/// <summary>The page as somebody at it sees and uses it.</summary>
static class BenchPage
{
    /// <summary>The tabs of parts, in their order.</summary>
    public static readonly string[] Parts = ["Chosen", "Points", "Runs", "Supply", "Stock", "Text"];

    /// <summary>The tabs of further questions, in their order.</summary>
    public static readonly string[] Studies = ["Discharge", "Compare", "Size", "Tolerance", "Cut list", "Whole job", "Report", "Request"];

    /// <summary>The answer in a sentence.</summary>
    public static ILocator Lead(this IPage page) => page.Locator(".lead");

    /// <summary>What the page tells.</summary>
    public static ILocator Notice(this IPage page) => page.Locator(".notice");

    /// <summary>A line for every nozzle that has an answer.</summary>
    public static ILocator Nozzles(this IPage page) => page.Locator("[aria-label=Nozzles] tbody tr");

    /// <summary>The faults, one a line.</summary>
    public static ILocator Faults(this IPage page) => page.Locator(".faults li");

    /// <summary>A button of the head of the page or of the drawing.</summary>
    public static ILocator Button(this IPage page, string name) => page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true });

    /// <summary>Comes back when there is an answer to the document as it is.</summary>
    public static async Task AnsweredAsync(this IPage page)
    {
        await Expect(page.Locator(".lead .badge")).ToBeVisibleAsync();
        await Expect(page.Locator(".lead.stale")).ToHaveCountAsync(0);
    }

    /// <summary>Turns to a tab of the parts or of the further questions.</summary>
    public static async Task TurnToAsync(this IPage page, string tab)
    {
        var found = page.GetByRole(AriaRole.Tab, new() { Name = tab, Exact = true });
        await found.ClickAsync();
        await Expect(found).ToHaveAttributeAsync("aria-selected", "true");
    }

    /// <summary>Begins with an example or the empty sheet.</summary>
    public static Task BeginAsync(this IPage page, string name) => page.GetByLabel("New from an example or an empty sheet").SelectOptionAsync(name);

    /// <summary>Begins with an example and waits for its answer.</summary>
    public static async Task BeginExampleAsync(this IPage page, string name, string title)
    {
        await page.BeginAsync(name);
        await Expect(page.Lead().Locator("h2")).ToContainTextAsync(title);
        await page.AnsweredAsync();
    }

    /// <summary>Opens a file.</summary>
    public static Task OpenFileAsync(this IPage page, string name, byte[] bytes) =>
        page.Locator("input.file").SetInputFilesAsync(new FilePayload { Name = name, MimeType = "application/json", Buffer = bytes });

    /// <summary>Saves the document.</summary>
    public static async Task<(string Name, byte[] Bytes)> SaveAsync(this IPage page)
    {
        var download = await page.RunAndWaitForDownloadAsync(() => page.Button("Save").ClickAsync());
        return (download.SuggestedFilename, await File.ReadAllBytesAsync(await download.PathAsync(), TestContext.Current.CancellationToken));
    }

    /// <summary>The document, as it is saved.</summary>
    public static async Task<Sheet> SheetAsync(this IPage page) => Sheet.Of(Encoding.UTF8.GetString((await page.SaveAsync()).Bytes), TestContext.Current.CancellationToken);

    /// <summary>Presses the mouse on a part of the drawing: on the middle of its tube or symbol.</summary>
    public static async Task PointAtAsync(this IPage page, string path)
    {
        var thing = page.Locator($"g[role=button][data-path='{path}']");
        await thing.ScrollIntoViewIfNeededAsync();
        // What is still moving as answers come in is pointed at once it rests.
        float[] before = [], at = await SpotAsync(thing);
        for (var tries = 0; !at.SequenceEqual(before) && tries < 100; tries++)
        {
            await Task.Delay(100, TestContext.Current.CancellationToken);
            (before, at) = (at, await SpotAsync(thing));
        }
        await page.Mouse.ClickAsync(at[0], at[1]);
    }

    static Task<float[]> SpotAsync(ILocator thing) => thing.EvaluateAsync<float[]>(
            """
            thing => {
              const line = thing.querySelector("polyline");
              if (line && thing.dataset.path.startsWith("runs/")) {
                const spot = line.getPointAtLength(line.getTotalLength() / 2).matrixTransform(line.getScreenCTM());
                return [spot.x, spot.y];
              }
              const box = thing.querySelector("circle, polygon, polyline").getBoundingClientRect();
              return [box.x + box.width / 2, box.y + box.height / 2];
            }
            """);

    /// <summary>Goes on with the tab key until a thing has the focus.</summary>
    public static async Task TabToAsync(this IPage page, ILocator wanted)
    {
        for (var presses = 0; presses < 400; presses++)
        {
            if (await wanted.CountAsync() > 0 && await wanted.First.EvaluateAsync<bool>("thing => thing === document.activeElement")) return;
            await page.Keyboard.PressAsync("Tab");
        }
        Assert.Fail($"The tab key does not lead to {wanted}.");
    }
}
