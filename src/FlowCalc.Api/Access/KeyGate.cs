using FlowCalc.Api.Faults;

namespace FlowCalc.Api.Access;

/// <summary>Lets nobody from another machine in without a key, unless that was waived; the health of the service everybody may see.</summary>
internal sealed class KeyGate(RequestDelegate next, AccessSettings settings, KeyRing keys)
{
    /// <summary>Lets a request in, or answers 401.</summary>
    public Task InvokeAsync(HttpContext context)
    {
        if (IsOpen(context) || keys.Opens(context.Request.Headers.Authorization)) return next(context);
        // A browser asks its user for the password of Basic; programs send a bearer token.
        context.Response.Headers.WWWAuthenticate = new([@"Bearer realm=""FlowCalc""", @"Basic realm=""FlowCalc"", charset=""UTF-8"""]);
        return ProblemWriter.WriteAsync(context, Problems.NoKey());
    }

    bool IsOpen(HttpContext context)
    {
        if (context.Request.Path.StartsWithSegments("/health")) return true;
        if (keys.IsEmpty && settings.WithoutKeys) return true;
        return !settings.AskLoopback && OwnMachine.Asks(context);
    }
}
