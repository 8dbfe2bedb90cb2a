using System.Numerics;

namespace FlowCalc.Networks;

/// <summary>Viscosity of the fluid in each run, for whole vectors of runs. Implemented by structs, so that one viscosity for all costs nothing.</summary>
internal interface IRunViscosity
{
    /// <summary>True where all runs have the same.</summary>
    bool IsOne { get; }

    /// <summary>1/μ of neighbouring runs, 1/(Pa·s).</summary>
    /// <param name="at">First run.</param>
    Vector<double> Inverse(int at);

    /// <summary>μ² of neighbouring runs, Pa²·s².</summary>
    /// <param name="at">First run.</param>
    Vector<double> Square(int at);

    /// <summary>1/μ of listed runs, 1/(Pa·s).</summary>
    /// <param name="runs">The list.</param>
    /// <param name="at">First of them.</param>
    Vector<double> Inverse(int[] runs, int at);

    /// <summary>μ² of listed runs, Pa²·s².</summary>
    /// <param name="runs">The list.</param>
    /// <param name="at">First of them.</param>
    Vector<double> Square(int[] runs, int at);
}
