namespace FlowCalc.Layouts;

/// <summary>The JSON Schema of the layout document, draft 2020-12.</summary>
/// <remarks>What a schema cannot say (sizes inside a text, names that must exist, the shape of the tree) only <see cref="LayoutReader"/> checks.</remarks>
public static class LayoutSchema
{
    /// <summary>The schema as UTF-8 JSON.</summary>
    public static ReadOnlyMemory<byte> Utf8 { get; } = Embedded("layout.schema.json");

    /// <summary>A schema of the library.</summary>
    internal static byte[] Embedded(string name)
    {
        using var stream = typeof(LayoutSchema).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException("The schema is not embedded.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
