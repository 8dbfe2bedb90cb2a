using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Access;

/// <summary>Lets nobody from another machine in without a key, unless that was waived; the health of the service everybody may see.</summary>
internal sealed class KeyGate(RequestDelegate next, AccessSettings settings, KeyRing keys, IOptions<RateLimiterOptions> rate, ServiceLimits limits)
{
    /// <summary>Lets a request in, or answers 401, and 429 where the address has used up its minute.</summary>
    public async Task InvokeAsync(HttpContext context)
    {
        if (IsOpen(context) || keys.Opens(context.Request.Headers.Authorization))
        {
            await next(context);
            return;
        }
        // Whoever guesses keys has as many guesses a minute as other callers have requests; a right one beyond them is refused alike, further on.
        using var lease = rate.Value.GlobalLimiter?.AttemptAcquire(context);
        if (lease is { IsAcquired: false })
        {
            await LimitSetup.RefuseAsync(context, lease, limits);
            return;
        }
        // A browser asks its user for the password of Basic; programs send a bearer token.
        context.Response.Headers.WWWAuthenticate = new([@"Bearer realm=""FlowCalc""", @"Basic realm=""FlowCalc"", charset=""UTF-8"""]);
        await ProblemWriter.WriteAsync(context, Problems.NoKey());
    }

    bool IsOpen(HttpContext context)
    {
        if (context.Request.Path.StartsWithSegments("/health")) return true;
        if (keys.IsEmpty && settings.WithoutKeys) return true;
        return !settings.AskLoopback && OwnMachine.Asks(context);
    }
}
