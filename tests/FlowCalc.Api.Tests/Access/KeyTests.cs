using System.Net;
using System.Net.Http.Headers;
using System.Text;
using FlowCalc.Api.Tests.Flow;
using FlowCalc.Api.Tests.Requests;
using Microsoft.AspNetCore.Builder;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Api.Tests.Access;

public sealed class KeyTests
{
    const string Key = "a-key-of-a-workshop-42", Other = "another-key-of-a-boat-7";

    static readonly IPAddress Stranger = IPAddress.Parse("192.0.2.7");

    [Theory]
    [InlineData("Bearer " + Key)]
    [InlineData("bearer " + Other)]
    public async Task A_stranger_with_a_key_is_answered(string authorization)
    {
        await using var service = From(Stranger, ("Access:Keys:0", Key), ("Access:Keys:1", Other));
        using var caller = service.Caller();
        caller.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", authorization);

        await caller.PostFlow(Documents.Small).Json(200);
    }

    [Fact]
    public async Task A_browser_may_send_the_key_as_a_password()
    {
        await using var service = From(Stranger, ("Access:Keys:0", Key));
        using var caller = service.Caller();
        caller.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Basic", Convert.ToBase64String(Encoding.UTF8.GetBytes("anybody:" + Key)));

        using var page = await caller.Get("/");
        Assert.Equal(HttpStatusCode.OK, page.StatusCode);
    }

    [Theory]
    [InlineData(null)]
    [InlineData("Bearer a-key-of-a-workshop-43")]
    [InlineData("Bearer " + Key + "x")]
    [InlineData("Bearer")]
    [InlineData("Basic !!!")]
    [InlineData("Basic YW55Ym9keQ==")]
    [InlineData("Digest " + Key)]
    public async Task A_stranger_without_a_key_gets_a_401_everywhere_but_on_the_health(string? authorization)
    {
        await using var service = From(Stranger, ("Access:Keys:0", Key));
        using var caller = service.Caller();
        if (authorization is not null) caller.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", authorization);

        await caller.PostFlow(Documents.Small).Fault(401);
        foreach (var path in (string[])["/", "/docs", "/openapi/v1.json", "/v1/examples", "/_framework/blazor.web.js", "/v1/jobs/x"])
        {
            using var refused = await caller.Get(path);
            Assert.Equal(HttpStatusCode.Unauthorized, refused.StatusCode);
            Assert.Contains("Bearer", refused.Headers.WwwAuthenticate.ToString(), StringComparison.Ordinal);
        }
        using var health = await caller.Get("/health/live");
        Assert.Equal(HttpStatusCode.OK, health.StatusCode);
    }

    [Fact]
    public async Task Guesses_of_a_key_count_among_the_requests_of_a_minute_and_a_right_one_beyond_them_shows_no_difference()
    {
        await using var service = From(Stranger, ("Access:Keys:0", Key), ("Limits:RequestsPerMinute", "3"));
        using var guesser = service.Caller();
        guesser.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", "Bearer " + Other);
        using var knowing = service.Caller();
        knowing.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", "Bearer " + Key);

        for (var guess = 0; guess < 3; guess++) await guesser.Get("/v1/examples").Fault(401);

        using var refused = await guesser.Get("/v1/examples");
        Assert.NotNull(refused.Headers.RetryAfter);
        var wrong = await Task.FromResult(refused).Fault(429);
        var right = await knowing.Get("/v1/examples").Fault(429);
        Assert.Equal(wrong.GetRawText(), right.GetRawText());
    }

    [Fact]
    public async Task A_stranger_is_refused_where_no_key_is_set_unless_that_is_waived()
    {
        await using var closed = From(Stranger);
        await using var waived = From(Stranger, ("Access:WithoutKeys", "true"));
        using var one = closed.Caller();
        using var other = waived.Caller();

        await one.PostFlow(Documents.Small).Fault(401);
        await other.PostFlow(Documents.Small).Json(200);
    }

    [Theory]
    [InlineData("", "203.0.113.9")]
    [InlineData("", "127.0.0.1")]
    [InlineData("127.0.0.0/8", "127.0.0.1")]
    [InlineData("127.0.0.0/8", "::1")]
    [InlineData("127.0.0.0/8", "127.0.0.1, 127.9.9.9")]
    public async Task Whoever_came_through_a_proxy_is_not_this_machine_whatever_the_header_claims(string proxy, string forwarded)
    {
        await using var service = proxy.Length > 0
            ? From(IPAddress.Loopback, ("Access:Keys:0", Key), ("Access:Proxies:0", proxy))
            : From(IPAddress.Loopback, ("Access:Keys:0", Key));
        using var caller = service.Caller();
        caller.DefaultRequestHeaders.Add("X-Forwarded-For", forwarded);

        await caller.PostFlow(Documents.Small).Fault(401);
    }

    [Theory]
    [InlineData("127.0.0.1")]
    [InlineData("::1")]
    public async Task A_caller_on_this_machine_needs_no_key_unless_it_is_asked_too(string address)
    {
        await using var trusting = From(IPAddress.Parse(address), ("Access:Keys:0", Key));
        await using var asking = From(IPAddress.Parse(address), ("Access:Keys:0", Key), ("Access:AskLoopback", "true"));
        using var one = trusting.Caller();
        using var other = asking.Caller();

        await one.PostFlow(Documents.Small).Json(200);
        await other.PostFlow(Documents.Small).Fault(401);
    }

    [Theory]
    [InlineData("http://0.0.0.0:0", false)]
    [InlineData("http://[::]:0", false)]
    [InlineData("http://*:0", false)]
    [InlineData("http://127.0.0.1:0", true)]
    [InlineData("http://[::1]:0", true)]
    [InlineData("http://localhost:5080", true)]
    [InlineData("http://line.example:80", false)]
    [InlineData("http://unix:/run/flowcalc.sock", true)]
    public void An_address_is_this_machines_own_or_not(string address, bool isOwn) => Assert.Equal(isOwn, Api.Access.OpenAddresses.IsOwn(address));

    [Theory]
    [InlineData("http://0.0.0.0:0", "", true)]
    [InlineData("http://0.0.0.0:0", "Access:Keys:0=" + Key, false)]
    [InlineData("http://0.0.0.0:0", "Access:WithoutKeys=true", false)]
    [InlineData("http://127.0.0.1:0", "", false)]
    public async Task A_start_where_strangers_reach_it_without_a_key_ends_and_says_what_to_set(string url, string setting, bool ends)
    {
        var builder = WebApplication.CreateSlimBuilder(["--urls=" + url, .. setting.Length > 0 ? (string[])["--" + setting] : []]);
        builder.Logging.ClearProviders();
        Api.Access.AccessSetup.AddAccess(builder);
        await using var app = builder.Build();

        var thrown = await Record.ExceptionAsync(() => app.StartAsync(TestContext.Current.CancellationToken));

        Assert.Equal(ends, thrown is InvalidOperationException);
        if (ends) Assert.Contains("Access__Keys__0", thrown!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task No_key_is_in_the_log()
    {
        var log = new EveryLine();
        await using var service = From(Stranger, ("Access:Keys:0", Key), ("Logging:LogLevel:Default", "Trace"), ("Logging:LogLevel:Microsoft.AspNetCore", "Trace"));
        await using var logged = service.WithWebHostBuilder(host => host.ConfigureServices(services => services.AddSingleton<ILoggerProvider>(log)));
        using var caller = logged.CreateClient();
        caller.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", "Bearer " + Key);
        await caller.PostFlow(Documents.Small).Json(200);
        caller.DefaultRequestHeaders.Remove("Authorization");
        caller.DefaultRequestHeaders.TryAddWithoutValidation("Authorization", "Bearer " + Other);
        await caller.PostFlow(Documents.Small).Fault(401);

        Assert.NotEmpty(log.Lines);
        Assert.DoesNotContain(log.Lines, line => line.Contains(Key, StringComparison.Ordinal) || line.Contains(Other, StringComparison.Ordinal));
    }

    static CallerFrom From(IPAddress address, params (string, string)[] settings) => new CallerFrom(address, settings);
}
