using FlowCalc.Studies.Sampling;

namespace FlowCalc.Studies.Tolerance;

/// <summary>A thing with the values that it is given.</summary>
/// <param name="Thing">The thing.</param>
/// <param name="Values">Its values, SI.</param>
/// <param name="Source">Whose spread it is.</param>
public sealed record SpreadVariable(SpreadThing Thing, Distribution Values, string Source);
