namespace FlowCalc.Findings;

/// <summary>Counts what is found in many answers of one design: by code and place the answers in which it came to a severity.</summary>
sealed class FindingTally
{
    readonly Dictionary<(string Code, string Where), Severity> inAnswer = [];

    /// <summary>The worst severity of the answer at hand.</summary>
    public Severity Worst { get; private set; }

    /// <summary>Answers by code, place and severity.</summary>
    public Dictionary<(string Code, string Where, Severity Severity), int> Answers { get; } = [];

    /// <summary>Starts the next answer.</summary>
    public void Begin()
    {
        inAnswer.Clear();
        Worst = Severity.Pass;
    }

    /// <summary>Notes what is found in the answer at hand; of one place the worst counts.</summary>
    public void Add(string code, Severity severity, string where)
    {
        Worst = severity > Worst ? severity : Worst;
        if (!inAnswer.TryGetValue((code, where), out var known) || severity > known) inAnswer[(code, where)] = severity;
    }

    /// <summary>Counts the answer at hand.</summary>
    public void End()
    {
        foreach (var ((code, where), severity) in inAnswer)
        {
            Answers.TryGetValue((code, where, severity), out var count);
            Answers[(code, where, severity)] = count + 1;
        }
    }
}
