using FlowCalc.Api.Answers;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Operations;

namespace FlowCalc.Api.Requests;

/// <summary>What came of a call: the text of its answer, or a fault.</summary>
internal readonly record struct CallOutcome
{
    /// <summary>A call that is answered.</summary>
    /// <param name="text">Its answer.</param>
    /// <param name="began">When its work began, a timestamp of <see cref="System.Diagnostics.Stopwatch"/>.</param>
    public CallOutcome(AnswerText text, long began) => (Text, Word, Began) = (text, ServiceMeter.Answered, began);

    /// <summary>A call that has no answer.</summary>
    /// <param name="fault">Why.</param>
    /// <param name="word">As what it is counted.</param>
    /// <param name="began">When its work began, or the call where it came to none.</param>
    public CallOutcome(Problem fault, string word, long began) => (Fault, Word, Began) = (fault, word, began);

    /// <summary>The answer; null where there is a fault.</summary>
    public AnswerText? Text { get; }

    /// <summary>The fault; null where there is an answer.</summary>
    public Problem? Fault { get; }

    /// <summary>As what it is counted.</summary>
    public string Word { get; }

    /// <summary>When its work began.</summary>
    public long Began { get; }
}
