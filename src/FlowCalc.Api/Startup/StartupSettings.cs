namespace FlowCalc.Api.Startup;

/// <summary>The section <c>Startup</c> of the settings.</summary>
public sealed class StartupSettings
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Startup";

    /// <summary>True to print the demo layout, solved in full, once the service listens. Its flow is solved before that either way, as the service's own check.</summary>
    public bool Demo { get; init; } = true;
}
