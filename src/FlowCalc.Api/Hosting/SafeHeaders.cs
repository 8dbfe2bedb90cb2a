namespace FlowCalc.Api.Hosting;

/// <summary>Headers that go with every answer.</summary>
internal static class SafeHeaders
{
    /// <summary>Forbids browsers to guess a content type and to send the address on.</summary>
    public static void UseSafeHeaders(this IApplicationBuilder app) => app.Use((context, next) =>
    {
        // The exception handler clears the headers, so they are set when the answer starts.
        context.Response.OnStarting(static state =>
        {
            var headers = ((HttpResponse)state).Headers;
            headers.XContentTypeOptions = "nosniff";
            headers["Referrer-Policy"] = "no-referrer";
            return Task.CompletedTask;
        }, context.Response);
        return next(context);
    });
}
