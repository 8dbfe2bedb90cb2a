using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Jobs;

/// <summary>Work whose answer is written as the call itself writes it.</summary>
/// <typeparam name="TAnswer">The answer.</typeparam>
/// <param name="call">The call.</param>
/// <param name="steps">Steps of which progress is told.</param>
/// <param name="work">Works the answer out.</param>
/// <param name="writer">Writes it.</param>
internal sealed class JobWork<TAnswer>(string call, int steps, Func<IProgress<int>, CancellationToken, TAnswer> work, Action<JsonText, TAnswer> writer) : IJobWork
{
    public string Call => call;

    public int Steps => steps;

    public byte[] Run(IProgress<int> progress, CancellationToken cancel)
    {
        var answer = work(progress, cancel);
        using var text = new JsonText();
        writer(text, answer);
        return text.Bytes.ToArray();
    }
}
