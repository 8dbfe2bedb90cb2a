namespace FlowCalc.Checks;

/// <summary>A part of the job, worked out and judged.</summary>
/// <typeparam name="TResult">What is worked out.</typeparam>
/// <typeparam name="TJudgement">What is found in it.</typeparam>
/// <param name="Result">What is worked out.</param>
/// <param name="Judgement">What is found in it.</param>
public sealed record Answered<TResult, TJudgement>(TResult Result, TJudgement Judgement);
