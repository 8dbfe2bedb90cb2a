using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Hosting;

/// <summary>How the service is.</summary>
/// <param name="Status">In one word.</param>
public sealed record HealthAnswer([property: AllowedValues("live", "ready", "starting")] string Status);
