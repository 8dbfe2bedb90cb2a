using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Answers;

/// <summary>The engine that answers.</summary>
internal static class Engine
{
    /// <summary>Its version and the mark of its data.</summary>
    public static EngineAnswer Answer { get; } = new(Version(), DataMark());

    static string Version()
    {
        var full = typeof(Layout).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()?.InformationalVersion ?? "unknown";
        return full.Split('+')[0];
    }

    static string DataMark()
    {
        var assembly = typeof(Layout).Assembly;
        using var hash = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var name in assembly.GetManifestResourceNames().Order(StringComparer.Ordinal))
        {
            using var table = assembly.GetManifestResourceStream(name)!;
            using var bytes = new MemoryStream();
            table.CopyTo(bytes);
            hash.AppendData(Encoding.UTF8.GetBytes(name));
            hash.AppendData(bytes.ToArray());
        }
        return Convert.ToHexStringLower(hash.GetHashAndReset().AsSpan(0, 6));
    }
}
