using FlowCalc.Api.Faults;
using Microsoft.Net.Http.Headers;

namespace FlowCalc.Api.Requests;

/// <summary>Whether a request says that it carries JSON in UTF-8.</summary>
internal static class JsonContentType
{
    /// <summary>The fault; null where the body may be read.</summary>
    public static Problem? Fault(HttpRequest request)
    {
        var encoding = request.Headers.ContentEncoding.ToString();
        if (encoding.Length > 0 && !encoding.Equals("identity", StringComparison.OrdinalIgnoreCase))
            return Problems.Encoded(encoding);
        return Fits(request.ContentType) ? null : Problems.WrongType(request.ContentType);
    }

    static bool Fits(string? contentType)
    {
        if (contentType is "application/json")
            return true;
        if (!MediaTypeHeaderValue.TryParse(contentType, out var type))
            return false;
        var isJson = type.MediaType.Equals("application/json", StringComparison.OrdinalIgnoreCase)
            || type.Suffix.Equals("json", StringComparison.OrdinalIgnoreCase);
        return isJson && (!type.Charset.HasValue || HeaderUtilities.RemoveQuotes(type.Charset).Equals("utf-8", StringComparison.OrdinalIgnoreCase));
    }
}
