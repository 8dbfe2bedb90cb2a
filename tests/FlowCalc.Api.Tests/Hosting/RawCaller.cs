using System.Net;
using System.Net.Sockets;
using System.Text;

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>A caller who keeps to no rules: bytes on a connection to a service.</summary>
sealed class RawCaller : IDisposable
{
    readonly TcpClient connection = new();

    /// <summary>Connects to a service.</summary>
    /// <param name="address">Where it listens.</param>
    /// <param name="receives">Bytes that the connection takes before they are read; null for as many as the system thinks best.</param>
    public static async Task<RawCaller> ToAsync(Uri address, int? receives = null)
    {
        var caller = new RawCaller();
        if (receives is { } bytes) caller.connection.ReceiveBufferSize = bytes;
        await caller.connection.ConnectAsync(IPAddress.Loopback, address.Port, TestContext.Current.CancellationToken);
        return caller;
    }

    /// <summary>Sends text; a service may have hung up before it is all sent, which is not the caller's matter.</summary>
    public async Task SendAsync(string text)
    {
        try
        {
            await connection.GetStream().WriteAsync(Encoding.ASCII.GetBytes(text), TestContext.Current.CancellationToken);
        }
        catch (IOException)
        {
        }
    }

    /// <summary>What comes back first, 8 kB at most.</summary>
    public async Task<string> FirstAsync()
    {
        var buffer = new byte[8192];
        return Encoding.UTF8.GetString(buffer, 0, await connection.GetStream().ReadAsync(buffer, TestContext.Current.CancellationToken));
    }

    /// <summary>What comes back until the service hangs up.</summary>
    public async Task<string> RestAsync()
    {
        var text = new StringBuilder();
        var buffer = new byte[8192];
        try
        {
            while (await connection.GetStream().ReadAsync(buffer, TestContext.Current.CancellationToken) is > 0 and var read) text.Append(Encoding.UTF8.GetString(buffer, 0, read));
        }
        catch (IOException)
        {
        }
        return text.ToString();
    }

    public void Dispose() => connection.Dispose();
}
