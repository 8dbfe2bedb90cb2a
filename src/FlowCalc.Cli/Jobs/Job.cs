using FlowCalc.Api.Faults;
using FlowCalc.Api.Requests;

namespace FlowCalc.Cli.Jobs;

/// <summary>What a job works out.</summary>
/// <typeparam name="TRequest">What its document describes.</typeparam>
/// <param name="request">What the document describes.</param>
/// <param name="asked">What is asked beside it.</param>
/// <param name="fault">Why there is no answer; null where there is one.</param>
/// <param name="cancel">Ends it.</param>
/// <returns>The answer; null where there is a fault.</returns>
delegate Outcome? JobWork<in TRequest>(TRequest request, Asked asked, out Problem? fault, CancellationToken cancel);

/// <summary>A job of the command line: a document in, an answer out.</summary>
interface IJob
{
    /// <summary>Name of its command.</summary>
    string Name { get; }

    /// <summary>What it does, in a sentence.</summary>
    string Description { get; }

    /// <summary>Reads and works.</summary>
    /// <param name="utf8">The document.</param>
    /// <param name="asked">What is asked beside it.</param>
    /// <param name="fault">Why there is no answer; null where there is one.</param>
    /// <param name="cancel">Ends it.</param>
    Outcome? Do(ReadOnlyMemory<byte> utf8, Asked asked, out Problem? fault, CancellationToken cancel);
}

/// <summary>A job by its reader and its work.</summary>
/// <typeparam name="TRequest">What its document describes.</typeparam>
/// <param name="Name">Name of its command.</param>
/// <param name="Description">What it does, in a sentence.</param>
/// <param name="Read">Reads its document.</param>
/// <param name="Work">Works it out.</param>
sealed record Job<TRequest>(string Name, string Description, BodyReader<TRequest> Read, JobWork<TRequest> Work) : IJob
    where TRequest : class
{
    /// <inheritdoc />
    public Outcome? Do(ReadOnlyMemory<byte> utf8, Asked asked, out Problem? fault, CancellationToken cancel) =>
        JsonBody.Read(utf8, Read, out fault, cancel) is { } request ? Work(request, asked, out fault, cancel) : null;
}
