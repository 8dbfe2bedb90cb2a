namespace FlowCalc.Layouts.Reading;

/// <summary>JSON pointers, RFC 6901.</summary>
static class JsonPointer
{
    /// <summary>A name as it stands in a pointer.</summary>
    public static string Escape(string name) =>
        name.AsSpan().ContainsAny('~', '/') ? name.Replace("~", "~0", StringComparison.Ordinal).Replace("/", "~1", StringComparison.Ordinal) : name;
}
