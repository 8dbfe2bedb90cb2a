namespace FlowCalc.Api.Hosting;

/// <summary>Whether the service has shown that it can answer. Set once, after the demo has been solved.</summary>
internal sealed class Readiness
{
    volatile bool ready;

    public bool IsReady => ready;

    public void Declare() => ready = true;
}
