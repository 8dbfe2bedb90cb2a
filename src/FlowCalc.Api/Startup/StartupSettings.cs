namespace FlowCalc.Api.Startup;

/// <summary>The section <c>Startup</c> of the settings.</summary>
public sealed class StartupSettings
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Startup";

    /// <summary>True to print the solved demo layout at the start. It is solved either way, as the service's own check.</summary>
    public bool Demo { get; init; } = true;
}
