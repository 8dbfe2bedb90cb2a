namespace FlowCalc.Layouts;

/// <summary>A rule of upkeep: what falls due so many whole calendar months after a date.</summary>
/// <param name="Name">Its name, which no other rule has.</param>
/// <param name="Basis">The date that it counts from.</param>
/// <param name="From">Its own date; null for every other basis.</param>
/// <param name="Months">The interval, whole calendar months, 1 to 1200.</param>
public sealed record ServiceRule(string Name, DateBasis Basis, ServiceDate? From, int Months);
