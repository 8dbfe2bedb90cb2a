namespace FlowCalc.Api.Requests;

/// <summary>What a call works out where its answer is to be explained.</summary>
/// <typeparam name="TRequest">What its body describes.</typeparam>
/// <typeparam name="TAnswer">Its answer.</typeparam>
/// <param name="Work">Works out the answer with its explanation.</param>
/// <param name="Count">How much there is to explain.</param>
/// <param name="What">What that counts, such as <c>points</c>.</param>
internal sealed record ExplainedWork<TRequest, TAnswer>(DocumentWork<TRequest, TAnswer> Work, Func<TRequest, long> Count, string What)
    where TRequest : class
    where TAnswer : class;
