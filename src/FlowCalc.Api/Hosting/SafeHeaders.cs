namespace FlowCalc.Api.Hosting;

/// <summary>Headers that go with every answer.</summary>
internal static class SafeHeaders
{
    const string Nothing = "default-src 'none'; frame-ancestors 'none'";

    /// <summary>Forbids browsers to guess a content type, to send the address on, to show an answer within another page, and to run anything in one that is no page.</summary>
    public static void UseSafeHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        // The exception handler clears the headers, so they are set when the answer starts.
        context.Response.OnStarting(static state =>
        {
            var headers = ((HttpResponse)state).Headers;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            headers["Cross-Origin-Resource-Policy"] = "same-origin";
            headers.XFrameOptions = "DENY";
            // A page has a policy of its own; an answer that is no page may do nothing even where a browser takes it for one.
            if (headers.ContentSecurityPolicy.Count == 0) headers.ContentSecurityPolicy = Nothing;
            return Task.CompletedTask;
        }, context.Response);
        return next(context);
    });
}
