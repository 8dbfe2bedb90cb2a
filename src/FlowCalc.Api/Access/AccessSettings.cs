using System.Net;

namespace FlowCalc.Api.Access;

/// <summary>Who may call the service; the section <c>Access</c> of the settings.</summary>
public sealed class AccessSettings
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Access";

    /// <summary>Fewest characters of a key.</summary>
    public const int ShortestKey = 20;

    /// <summary>Keys, any of which opens the service to callers from other machines. Best given by the environment (<c>Access__Keys__0</c>), never in a file that is shared.</summary>
    public IReadOnlyList<string> Keys { get; init; } = [];

    /// <summary>True to listen on other addresses than this machine's own without any key, as where something before the service asks for one.</summary>
    public bool WithoutKeys { get; init; }

    /// <summary>True to ask callers on this machine for a key too; a proxy on the same machine that sends no forwarded addresses makes every caller one of those.</summary>
    public bool AskLoopback { get; init; }

    /// <summary>Origins whose pages may call the service from a browser, such as <c>https://line.example</c>; none by default.</summary>
    public IReadOnlyList<string> Origins { get; init; } = [];

    /// <summary>Addresses or networks (CIDR) of proxies whose forwarded address and scheme of a caller are believed; none by default.</summary>
    public IReadOnlyList<string> Proxies { get; init; } = [];

    /// <summary>What is wrong with it, in words; null where nothing is.</summary>
    public string? Fault()
    {
        if (Keys.Any(key => key.Length < ShortestKey || key.Any(one => one is <= ' ' or > '~'))) return $"A key of {Section}:Keys is shorter than {ShortestKey} characters, or has one that is no printable ASCII.";
        if (AskLoopback && Keys.Count == 0) return $"{Section}:AskLoopback asks for a key where {Section}:Keys has none.";
        if (Origins.FirstOrDefault(origin => !IsOrigin(origin)) is { } bad) return $"{Section}:Origins holds \"{bad}\"; an origin is a scheme, a host and perhaps a port, such as https://line.example, without a path.";
        if (Proxies.FirstOrDefault(proxy => !IPAddress.TryParse(proxy, out _) && !IPNetwork.TryParse(proxy, out _)) is { } stranger) return $"{Section}:Proxies holds \"{stranger}\"; a proxy is an IP address or a network such as 10.0.0.0/8.";
        return null;
    }

    static bool IsOrigin(string origin) =>
        Uri.TryCreate(origin, UriKind.Absolute, out var uri) && uri.Scheme is "http" or "https" && origin == uri.GetLeftPart(UriPartial.Authority) && uri.UserInfo.Length == 0;
}
