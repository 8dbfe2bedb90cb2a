namespace FlowCalc.Layouts.Editing;

/// <summary>A change that could not be made.</summary>
/// <param name="Change">Its place among the changes.</param>
/// <param name="Message">What was read and what would be right.</param>
public readonly record struct EditFault(int Change, string Message);
