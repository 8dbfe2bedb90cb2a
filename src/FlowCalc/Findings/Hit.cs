namespace FlowCalc.Findings;

/// <summary>One place where a rule found something, before equal ones are gathered.</summary>
/// <param name="Item">Its place in the document's order: the index of the point, run or zone.</param>
/// <param name="Id">Its id.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="Badness">What to compare hits of one rule by; more is worse.</param>
/// <param name="Measured">What was found, SI.</param>
/// <param name="Bound">The step that it is beyond, SI.</param>
readonly record struct Hit(int Item, string Id, Severity Severity, double Badness, double Measured, double Bound);
