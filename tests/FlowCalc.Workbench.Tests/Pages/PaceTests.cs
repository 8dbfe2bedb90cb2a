using FlowCalc.Workbench.Tests.Hosting;
using static Microsoft.Playwright.Assertions;

namespace FlowCalc.Workbench.Tests.Pages;

public sealed class PaceTests(Site site, ITestOutputHelper output)
{
    [Fact]
    public async Task Every_change_of_the_demo_is_answered_with_another_figure_and_the_time_is_told()
    {
        var page = await site.OpenAsync();
        await page.TurnToAsync("Supply");
        var times = new List<double>();
        // Between the key and the figure nothing but the page's own clock is in the way.
        const string Watch = """
            () => {
              window.pace = null;
              const figure = () => document.querySelector("[aria-label=Nozzles] tbody td.number").textContent;
              const [before, lead] = [figure(), document.querySelector(".lead")];
              document.querySelector("#at-supply-bottle-chargePressure").addEventListener("input", () => {
                const begin = performance.now();
                const seen = new MutationObserver(() => {
                  if (figure() === before || document.querySelector(".lead.stale")) return;
                  window.pace = performance.now() - begin;
                  seen.disconnect();
                });
                seen.observe(document.body, { subtree: true, childList: true, characterData: true, attributes: true });
              }, { once: true });
            }
            """;
        for (var pressure = 12; pressure < 22; pressure++)
        {
            if (pressure == 14) continue;
            await page.EvaluateAsync(Watch);
            await page.GetByLabel("Charge pressure").FillAsync($"{pressure} bar");
            await page.WaitForFunctionAsync("() => window.pace !== null");
            times.Add(await page.EvaluateAsync<double>("window.pace"));
        }

        times.Sort();
        output.WriteLine($"Key to figure: {times[times.Count / 2]:0} ms in the middle of {times.Count}, {times[0]:0} to {times[^1]:0} ms.");
        await Expect(page.Faults()).ToHaveCountAsync(0);
        Assert.Equal(9, times.Count);
    }
}
