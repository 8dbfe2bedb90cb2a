using FlowCalc.Workbench.Asking;
using FlowCalc.Workbench.Desks;
using FlowCalc.Workbench.Pages;
using FlowCalc.Workbench.Sheets;
using FlowCalc.Workbench.Solving;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace FlowCalc.Workbench.Hosting;

/// <summary>Puts the page on a web host.</summary>
public static class WorkbenchSetup
{
    // Scripts, styles, pictures and connections from this host alone; nothing inline runs.
    const string Policy =
        "default-src 'self'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; object-src 'none'; base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    /// <summary>Registers the services of the page.</summary>
    /// <param name="services">Services of the host.</param>
    /// <param name="cases">Where the parts of one piece of work run beside each other.</param>
    /// <param name="limits">How much its studies may ask.</param>
    public static void AddWorkbench(this IServiceCollection services, Func<IServiceProvider, TaskScheduler> cases, Func<IServiceProvider, StudyLimits> limits)
    {
        // A document typed or pasted as text comes in one message, in which each sign may be written as two.
        services.AddRazorComponents().AddInteractiveServerComponents().AddHubOptions(hub => hub.MaximumReceiveMessageSize = 2 * Sheet.MostBytes + 64 * 1024);
        services.AddScoped<StaticMarkup>();
        services.AddSingleton(host => new WorkPlaces(cases(host)));
        services.AddSingleton(limits);
        services.AddScoped<Desk>();
        // Nothing that outlives the process is protected, so no key is written anywhere.
        services.AddDataProtection().UseEphemeralDataProtectionProvider();
    }

    /// <summary>Sends a policy with the page that keeps the browser on this host.</summary>
    public static void UseWorkbenchPolicy(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        if (context.Request.Path == "/") context.Response.Headers.ContentSecurityPolicy = Policy;
        return next(context);
    });

    /// <summary>Puts the page at the root.</summary>
    /// <remarks>Static files of the page must be mapped by the host.</remarks>
    public static void MapWorkbench(this IEndpointRouteBuilder app) => app.MapRazorComponents<App>().AddInteractiveServerRenderMode(options => options.ContentSecurityFrameAncestorsPolicy = null);
}
