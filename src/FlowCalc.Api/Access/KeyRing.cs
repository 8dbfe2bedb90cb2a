using System.Security.Cryptography;
using System.Text;

namespace FlowCalc.Api.Access;

/// <summary>The keys that open the service, held as hashes and compared in a time that tells nothing of them.</summary>
internal sealed class KeyRing(AccessSettings settings)
{
    const string Bearer = "Bearer ", Basic = "Basic ";

    readonly byte[][] hashes = [.. settings.Keys.Select(Hash)];

    /// <summary>Whether there is any key.</summary>
    public bool IsEmpty => hashes.Length == 0;

    /// <summary>Whether a request bears one of them.</summary>
    /// <param name="authorization">Its <c>Authorization</c> header: the key as a bearer token (RFC 6750), or as the password of Basic (RFC 7617), which browsers ask for by themselves.</param>
    public bool Opens(string? authorization) => KeyOf(authorization) is { } key && Knows(key);

    bool Knows(string key)
    {
        var hash = Hash(key);
        var found = false;
        foreach (var known in hashes) found |= CryptographicOperations.FixedTimeEquals(known, hash);
        return found;
    }

    static string? KeyOf(string? authorization)
    {
        if (authorization is null) return null;
        if (authorization.StartsWith(Bearer, StringComparison.OrdinalIgnoreCase)) return authorization[Bearer.Length..].Trim();
        if (!authorization.StartsWith(Basic, StringComparison.OrdinalIgnoreCase)) return null;
        var coded = authorization[Basic.Length..].Trim();
        var bytes = new byte[coded.Length];
        if (!Convert.TryFromBase64String(coded, bytes, out var length)) return null;
        var pair = Encoding.UTF8.GetString(bytes, 0, length);
        return pair.IndexOf(':', StringComparison.Ordinal) is >= 0 and var colon ? pair[(colon + 1)..] : null;
    }

    static byte[] Hash(string key) => SHA256.HashData(Encoding.UTF8.GetBytes(key));
}
