using System.Numerics;

namespace FlowCalc.Networks;

/// <summary>The same viscosity in all runs.</summary>
/// <param name="viscosity">Dynamic viscosity, Pa·s, over 0.</param>
internal readonly struct OneViscosity(double viscosity) : IRunViscosity
{
    readonly Vector<double> inverse = new(1 / viscosity), square = new(viscosity * viscosity);

    /// <inheritdoc/>
    public bool IsOne => true;

    /// <inheritdoc/>
    public Vector<double> Inverse(int at) => inverse;

    /// <inheritdoc/>
    public Vector<double> Square(int at) => square;

    /// <inheritdoc/>
    public Vector<double> Inverse(int[] runs, int at) => inverse;

    /// <inheritdoc/>
    public Vector<double> Square(int[] runs, int at) => square;
}
