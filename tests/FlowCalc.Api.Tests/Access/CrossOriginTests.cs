using System.Net;
using FlowCalc.Api.Access;
using FlowCalc.Api.Tests.Hosting;
using FlowCalc.Api.Tests.Requests;

namespace FlowCalc.Api.Tests.Access;

public sealed class CrossOriginTests(Service service)
{
    const string Known = "https://line.example", Strange = "https://elsewhere.example";

    [Theory]
    [InlineData(false, Known, false)]
    [InlineData(true, Known, true)]
    [InlineData(true, Strange, false)]
    public async Task Pages_of_other_origins_may_call_only_where_the_settings_name_them(bool isNamed, string origin, bool isAllowed)
    {
        await using var own = isNamed ? Service.With(("Access:Origins:0", Known)) : Service.With();
        using var caller = own.Caller();
        using var question = new HttpRequestMessage(HttpMethod.Options, new Uri("/v1/flow", UriKind.Relative));
        question.Headers.Add("Origin", origin);
        question.Headers.Add("Access-Control-Request-Method", "POST");
        question.Headers.Add("Access-Control-Request-Headers", "content-type");

        using var answer = await caller.SendAsync(question, TestContext.Current.CancellationToken);

        Assert.Equal(isAllowed ? origin : null, answer.Headers.TryGetValues("Access-Control-Allow-Origin", out var allowed) ? allowed.Single() : null);
        Assert.False(answer.Headers.Contains("Access-Control-Allow-Credentials"));
    }

    [Theory]
    [InlineData("/v1/examples")]
    [InlineData("/v1/none")]
    [InlineData("/health/live")]
    [InlineData("/")]
    [InlineData("/docs/")]
    public async Task Every_answer_has_headers_that_keep_browsers_safe(string path)
    {
        using var caller = service.Caller();
        using var answer = await caller.Get(path);

        string Header(string name) => Assert.Single(answer.Headers.GetValues(name));
        Assert.Equal("nosniff", Header("X-Content-Type-Options"));
        Assert.Equal("no-referrer", Header("Referrer-Policy"));
        Assert.Equal("DENY", Header("X-Frame-Options"));
        Assert.Equal("same-origin", Header("Cross-Origin-Resource-Policy"));
        Assert.Contains("frame-ancestors 'none'", Header("Content-Security-Policy"), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("203.0.113.9", "", false)]
    [InlineData("10.1.2.3", "10.0.0.0/8", true)]
    [InlineData("10.1.2.3", "10.1.2.3", true)]
    [InlineData("203.0.113.9", "10.0.0.0/8", false)]
    [InlineData("127.0.0.1", "", false)]
    public async Task A_forwarded_address_is_believed_of_a_trusted_proxy_alone(string proxy, string trusted, bool isBelieved)
    {
        List<(string, string)> settings = [("Access:WithoutKeys", "true"), ("Limits:RequestsPerMinute", "1")];
        if (trusted.Length > 0) settings.Add(("Access:Proxies:0", trusted));
        await using var behind = new CallerFrom(IPAddress.Parse(proxy), [.. settings]);

        // Each of two callers may ask once; where the proxy is not believed both are the one address that it has.
        await Ask("198.51.100.1", 200);
        await Ask("198.51.100.2", isBelieved ? 200 : 429);

        async Task Ask(string forwarded, int status)
        {
            using var caller = behind.Caller();
            caller.DefaultRequestHeaders.Add("X-Forwarded-For", forwarded);
            using var answer = await caller.Get("/v1/examples");
            Assert.Equal(status, (int)answer.StatusCode);
        }
    }

    [Theory]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:2:9:9:9:9", 429)]
    [InlineData("2001:db8:1:2::1", "2001:db8:1:3::1", 200)]
    [InlineData("::ffff:198.51.100.1", "::ffff:198.51.100.2", 200)]
    public async Task A_network_of_64_bits_is_counted_as_one_caller(string one, string other, int status)
    {
        await using var behind = new CallerFrom(IPAddress.Parse("10.1.2.3"), ("Access:WithoutKeys", "true"), ("Limits:RequestsPerMinute", "1"), ("Access:Proxies:0", "10.1.2.3"));
        using var first = behind.Caller();
        using var second = behind.Caller();
        first.DefaultRequestHeaders.Add("X-Forwarded-For", one);
        second.DefaultRequestHeaders.Add("X-Forwarded-For", other);

        await first.Get("/v1/examples").Json(200);

        using var answer = await second.Get("/v1/examples");
        Assert.Equal(status, (int)answer.StatusCode);
    }

    [Theory]
    [InlineData("short", null, null)]
    [InlineData("a key with spaces in it, long", null, null)]
    [InlineData(null, "line.example", null)]
    [InlineData(null, "https://line.example/", null)]
    [InlineData(null, "https://user@line.example", null)]
    [InlineData(null, null, "a proxy")]
    public void Settings_that_make_no_sense_are_told(string? key, string? origin, string? proxy)
    {
        static IReadOnlyList<string> One(string? value) => value is null ? [] : [value];

        Assert.NotNull(new AccessSettings { Keys = One(key), Origins = One(origin), Proxies = One(proxy) }.Fault());
        Assert.NotNull(new AccessSettings { AskLoopback = true }.Fault());
        Assert.Null(new AccessSettings { Keys = ["a-key-of-a-workshop-42"], Origins = [Known], Proxies = ["::1", "10.0.0.0/8"], AskLoopback = true }.Fault());
    }
}
