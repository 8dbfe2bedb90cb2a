namespace FlowCalc.Layouts;

/// <summary>The JSON Schema of the layout document, draft 2020-12.</summary>
/// <remarks>What a schema cannot say (sizes inside a text, names that must exist, the shape of the tree) only <see cref="LayoutReader"/> checks.</remarks>
public static class LayoutSchema
{
    /// <summary>The schema as UTF-8 JSON.</summary>
    public static ReadOnlyMemory<byte> Utf8 { get; } = Load();

    static byte[] Load()
    {
        using var stream = typeof(LayoutSchema).Assembly.GetManifestResourceStream("layout.schema.json")
            ?? throw new InvalidOperationException("The schema is not embedded.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
