namespace FlowCalc.Networks;

/// <summary>
/// The legs of all dividing tees. Leg i is run <c>Run[i]</c>; its loss times density is
/// Own·m|m| + Mixed·m·m_in + Inlet·m_in|m_in| + Eighth·m²·w⁶, with w = m / m_in and every factor over 2 A_in².
/// </summary>
/// <param name="Run">Run of the leg, in rising order.</param>
/// <param name="Own">Factor of the leg's own flow squared, 1/m⁴.</param>
/// <param name="Mixed">Factor of own flow times inlet flow, 1/m⁴.</param>
/// <param name="Inlet">Factor of the inlet flow squared, 1/m⁴.</param>
/// <param name="Eighth">Factor of the term of eighth degree in the split, 1/m⁴.</param>
internal sealed record TeeLegs(int[] Run, double[] Own, double[] Mixed, double[] Inlet, double[] Eighth);
