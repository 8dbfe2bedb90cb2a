namespace FlowCalc.Networks;

/// <summary>
/// How the potentials at its ends act on a run: at the present state its balance is Above·Ψ1' − Below·Ψ2' + Rest = loss', where primes mark what is
/// sought. Implemented by structs; for a liquid both factors are 1.
/// </summary>
internal interface IRunEnds
{
    /// <summary>Factor of the potential above, dimensionless, 0 or more.</summary>
    /// <param name="run">The run.</param>
    double Above(int run);

    /// <summary>Factor of the potential below, dimensionless; 0 where the run's end is choked.</summary>
    /// <param name="run">The run.</param>
    double Below(int run);

    /// <summary>What does not hang on the potentials sought, Pa: the weight, and what the two factors leave over.</summary>
    /// <param name="run">The run.</param>
    /// <param name="above">Present potential above, Pa.</param>
    /// <param name="below">Present potential below, Pa.</param>
    double Rest(int run, double above, double below);
}
