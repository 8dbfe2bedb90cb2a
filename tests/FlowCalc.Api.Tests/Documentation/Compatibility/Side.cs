namespace FlowCalc.Api.Tests.Documentation.Compatibility;

/// <summary>Who writes a value: what a caller may send must stay allowed, what an answer may hold must stay within what callers know.</summary>
enum Side
{
    Request,
    Answer,
}
