namespace FlowCalc.Api.Jobs;

/// <summary>What a job works out: a call's answer that takes longer than a caller should wait.</summary>
internal interface IJobWork
{
    /// <summary>The call that it is of, such as <c>/v1/tolerance</c>.</summary>
    string Call { get; }

    /// <summary>Steps of which progress is told, 1 or more.</summary>
    int Steps { get; }

    /// <summary>Works it out on the thread that calls.</summary>
    /// <param name="progress">Told now and then, by any thread, how many steps are done.</param>
    /// <param name="cancel">Asked throughout: it stops within 100 ms.</param>
    /// <returns>The answer, JSON in UTF-8, as the call itself would give it.</returns>
    /// <exception cref="Answers.NotFiniteException">There is no answer.</exception>
    /// <exception cref="OperationCanceledException">It was stopped.</exception>
    byte[] Run(IProgress<int> progress, CancellationToken cancel);
}
