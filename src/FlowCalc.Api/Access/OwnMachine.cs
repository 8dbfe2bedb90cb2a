using System.Net;

namespace FlowCalc.Api.Access;

/// <summary>Whether a caller sits at this very machine.</summary>
internal static class OwnMachine
{
    // What proxies add, and what is left of it once one was believed. Whoever came through a proxy is not this machine, whatever address the header claims.
    static readonly string[] Forwarded = ["X-Forwarded-For", "X-Original-For", "Forwarded", "X-Real-IP"];

    /// <summary>True for a request that came from a loopback address, or from within this process, through no proxy.</summary>
    /// <param name="context">The request.</param>
    public static bool Asks(HttpContext context)
    {
        // No address at all means a caller in this very process.
        if (context.Connection.RemoteIpAddress is { } address && !IPAddress.IsLoopback(address)) return false;
        return !Array.Exists(Forwarded, context.Request.Headers.ContainsKey);
    }
}
