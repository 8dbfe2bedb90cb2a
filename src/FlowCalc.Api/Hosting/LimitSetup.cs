using System.Globalization;
using System.Net;
using System.Net.Sockets;
using System.Threading.RateLimiting;
using FlowCalc.Api.Access;
using FlowCalc.Api.Faults;
using Microsoft.AspNetCore.RateLimiting;
using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Hosting;

/// <summary>Keeps the work of the service within <see cref="ServiceLimits"/>.</summary>
internal static class LimitSetup
{
    /// <summary>Reads and checks the limits, and sets up what keeps to them: places of work, bytes that are held, and requests a minute from one address.</summary>
    public static void AddLimits(this WebApplicationBuilder builder)
    {
        builder.Services.AddOptions<ServiceLimits>()
            .Bind(builder.Configuration.GetSection(ServiceLimits.Section), binder => binder.ErrorOnUnknownConfiguration = true)
            .ValidateOnStart();
        builder.Services.AddSingleton<IValidateOptions<ServiceLimits>, LimitRanges>();
        builder.Services.AddSingleton(services => services.GetRequiredService<IOptions<ServiceLimits>>().Value);

        builder.Services.AddSingleton<CaseThreads>();
        builder.Services.AddSingleton<WorkPlaces>();
        builder.Services.AddSingleton<HeldBytes>();
        builder.Services.AddRateLimiter(_ => { });
        builder.Services.AddOptions<RateLimiterOptions>().Configure<ServiceLimits>((options, limits) =>
        {
            options.RejectionStatusCode = StatusCodes.Status429TooManyRequests;
            options.OnRejected = (rejected, _) => new(RefuseAsync(rejected.HttpContext, rejected.Lease, limits));
            LeavePoolThreads(limits);
            if (limits.RequestsPerMinute > 0)
                options.GlobalLimiter = PartitionedRateLimiter.Create<HttpContext, IPAddress>(context => OfAddress(context, limits));
        });
    }

    // Work holds its thread until it is done. The pool adds threads to a busy processor only every few seconds, so that without
    // some to spare the end of a time limit and the health of the service would wait for that.
    static void LeavePoolThreads(ServiceLimits limits)
    {
        ThreadPool.GetMinThreads(out var workers, out var completions);
        ThreadPool.SetMinThreads(Math.Max(workers, limits.Workers + Environment.ProcessorCount), completions);
    }

    static RateLimitPartition<IPAddress> OfAddress(HttpContext context, ServiceLimits limits)
    {
        if (!limits.CountLoopback && OwnMachine.Asks(context)) return RateLimitPartition.GetNoLimiter(IPAddress.None);
        return RateLimitPartition.GetSlidingWindowLimiter(Counted(context.Connection.RemoteIpAddress ?? IPAddress.Loopback), _ => new SlidingWindowRateLimiterOptions
        {
            PermitLimit = limits.RequestsPerMinute,
            Window = TimeSpan.FromMinutes(1),
            SegmentsPerWindow = 6,
        });
    }

    // Of IPv6 a caller has a whole network of 64 bits to choose addresses from, so that network is counted as one.
    static IPAddress Counted(IPAddress address)
    {
        if (address.IsIPv4MappedToIPv6) return address.MapToIPv4();
        if (address.AddressFamily != AddressFamily.InterNetworkV6) return address;
        var bytes = address.GetAddressBytes();
        bytes.AsSpan(8).Clear();
        return new IPAddress(bytes);
    }

    /// <summary>Answers 429 to an address whose minute is used up.</summary>
    /// <param name="context">The request.</param>
    /// <param name="lease">What the limiter said.</param>
    /// <param name="limits">Limits of the service.</param>
    public static Task RefuseAsync(HttpContext context, RateLimitLease lease, ServiceLimits limits)
    {
        if (lease.TryGetMetadata(MetadataName.RetryAfter, out var wait))
            context.Response.Headers.RetryAfter = Math.Max(1, (int)Math.Ceiling(wait.TotalSeconds)).ToString(CultureInfo.InvariantCulture);
        return ProblemWriter.WriteAsync(context, Problems.TooOften(limits));
    }
}
