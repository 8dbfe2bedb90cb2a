using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>Temperatures and attitudes for which the discharge is asked.</summary>
/// <param name="Temperatures">Temperatures of agent and bottle; empty for the defaults.</param>
/// <param name="Attitudes">Attitudes; empty for the defaults.</param>
public sealed record DischargeCases(ImmutableArray<Temperature> Temperatures, ImmutableArray<Attitude> Attitudes);
