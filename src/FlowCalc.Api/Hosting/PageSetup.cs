using FlowCalc.Api.Tolerance;
using FlowCalc.Workbench.Asking;
using FlowCalc.Workbench.Hosting;

namespace FlowCalc.Api.Hosting;

/// <summary>The workbench in this process, bounded as the calls are.</summary>
internal static class PageSetup
{
    /// <summary>Registers the page and the files that it is made of.</summary>
    public static void AddPage(this WebApplicationBuilder builder)
    {
        builder.WebHost.UseStaticWebAssets();
        // Else a catch-all for files added later would answer 404 where a call has another method.
        builder.Configuration["ReloadStaticAssetsAtRuntime"] = "false";
        builder.Services.AddWorkbench(services => services.GetRequiredService<CaseThreads>(), services =>
        {
            var limits = services.GetRequiredService<ServiceLimits>();
            return new StudyLimits(limits.SizeStock, limits.SizeWork, ToleranceEndpoint.LimitsOf(limits));
        });
    }
}
