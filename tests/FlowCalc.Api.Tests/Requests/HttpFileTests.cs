using System.Net.Http.Headers;
using System.Text;
using FlowCalc.Api.Tests.Hosting;

namespace FlowCalc.Api.Tests.Requests;

public sealed class HttpFileTests(Service service)
{
    static readonly string Folder = Path.Combine(AppContext.BaseDirectory, "http");

    public static TheoryData<string> Files => [.. Directory.GetFiles(Folder, "*.http").Select(path => Path.GetFileName(path)!).Order(StringComparer.Ordinal)];

    [Theory]
    [MemberData(nameof(Files))]
    public async Task Every_request_of_a_file_is_answered_as_its_comment_says(string file)
    {
        using var caller = service.Caller();
        var requests = HttpFileRequest.ReadAll(Path.Combine(Folder, file));

        Assert.NotEmpty(requests);
        foreach (var request in requests)
        {
            using var message = new HttpRequestMessage(new HttpMethod(request.Method), new Uri(request.Target, UriKind.Relative));
            if (request.ContentType is { } type)
            {
                message.Content = new ByteArrayContent(Encoding.UTF8.GetBytes(request.Body));
                message.Content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
            }

            if (request.Prefer is { } preference)
                message.Headers.Add("Prefer", preference);

            using var response = await caller.SendAsync(message, TestContext.Current.CancellationToken);

            var text = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
            Assert.True(request.Expected == (int)response.StatusCode, $"{file}, \"{request.Title}\": {(int)response.StatusCode} {text[..Math.Min(text.Length, 2000)]}");
        }
    }

    [Fact]
    public async Task Every_call_of_the_contract_has_a_request_that_is_answered_200()
    {
        using var caller = service.Caller();
        var contract = await caller.Get("/openapi/v1.json").Json(200);

        var good = Directory.GetFiles(Folder, "*.http").SelectMany(HttpFileRequest.ReadAll).Where(request => request.Expected == 200)
            .Select(request => request.Target.Split('?')[0]).ToHashSet();

        // No file knows the id of a job before it is handed in; the tests of jobs ask for them.
        foreach (var path in contract.GetProperty("paths").EnumerateObject().Select(path => path.Name).Where(path => !path.StartsWith("/v1/jobs/", StringComparison.Ordinal)))
            Assert.True(good.Any(target => Fits(path, target)), $"No good request for {path}.");
    }

    static bool Fits(string path, string target) =>
        path == target || (path.EndsWith('}') && target.StartsWith(path[..path.IndexOf('{')], StringComparison.Ordinal));
}
