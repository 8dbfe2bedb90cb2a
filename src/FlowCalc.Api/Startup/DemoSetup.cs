using FlowCalc.Api.Hosting;

namespace FlowCalc.Api.Startup;

/// <summary>What the service does before it takes its first request.</summary>
internal static class DemoSetup
{
    /// <summary>Solves the demo layout at the start, which also shows that the service can answer.</summary>
    public static void AddDemo(this WebApplicationBuilder builder)
    {
        builder.Services.AddSingleton<Readiness>();
        builder.Services.AddOptions<StartupSettings>().Bind(builder.Configuration.GetSection(StartupSettings.Section), binder => binder.ErrorOnUnknownConfiguration = true).ValidateOnStart();
        builder.Services.AddSingleton(_ => DemoConsole.OfProcess());
        builder.Services.AddHostedService<DemoAtStart>();
    }
}
