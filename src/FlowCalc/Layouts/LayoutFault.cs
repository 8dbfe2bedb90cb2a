namespace FlowCalc.Layouts;

/// <summary>Something in a document that makes no sense.</summary>
/// <param name="Pointer">JSON pointer (RFC 6901) of the value, or of the place where one is missing.</param>
/// <param name="Message">What was read and what would be right.</param>
public readonly record struct LayoutFault(string Pointer, string Message);
