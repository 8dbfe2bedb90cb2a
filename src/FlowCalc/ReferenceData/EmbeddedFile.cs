namespace FlowCalc.ReferenceData;

/// <summary>Files of the <c>reference-data</c> folder, which travel inside the library.</summary>
internal static class EmbeddedFile
{
    const string Prefix = "reference-data/";

    /// <summary>Paths of all embedded files under a folder, relative to <c>reference-data</c>, in ordinal order.</summary>
    public static IEnumerable<string> Under(string folder) =>
        typeof(EmbeddedFile).Assembly.GetManifestResourceNames()
            .Select(name => name.Replace('\\', '/'))
            .Where(name => name.StartsWith(Prefix + folder, StringComparison.Ordinal))
            .Select(name => name[Prefix.Length..])
            .Order(StringComparer.Ordinal);

    /// <summary>The bytes of one file.</summary>
    /// <param name="path">Path relative to <c>reference-data</c>, with forward slashes.</param>
    /// <exception cref="InvalidDataException">The library holds no such file.</exception>
    public static byte[] Read(string path)
    {
        using var stream = typeof(EmbeddedFile).Assembly.GetManifestResourceStream(Prefix + path)
            ?? throw new InvalidDataException($"The library holds no reference data '{path}'.");
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        return bytes;
    }
}
