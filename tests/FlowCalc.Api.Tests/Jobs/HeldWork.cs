using System.Text;
using FlowCalc.Api.Jobs;

namespace FlowCalc.Api.Tests.Jobs;

/// <summary>Work that waits until the test lets it go, or until it is stopped.</summary>
sealed class HeldWork(string answer = "\"done\"", Exception? thrown = null) : IJobWork, IDisposable
{
    readonly ManualResetEventSlim gate = new();

    public string Call => "/v1/test";

    public int Steps => 10;

    /// <summary>Comes when it has begun.</summary>
    public TaskCompletionSource Begun { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

    /// <summary>Comes when it has noticed that it is to stop.</summary>
    public TaskCompletionSource Noticed { get; } = new(TaskCreationOptions.RunContinuationsAsynchronously);

    public void Release() => gate.Set();

    public byte[] Run(IProgress<int> progress, CancellationToken cancel)
    {
        progress.Report(4);
        progress.Report(3);
        Begun.SetResult();
        try
        {
            gate.Wait(cancel);
        }
        catch (OperationCanceledException)
        {
            Noticed.SetResult();
            throw;
        }
        return thrown is null ? Encoding.UTF8.GetBytes(answer) : throw thrown;
    }

    public void Dispose() => gate.Dispose();
}
