using System.Numerics;

namespace FlowCalc.Networks;

/// <summary>A viscosity for each run.</summary>
/// <param name="viscosities">Dynamic viscosity, Pa·s, over 0, padded to whole vectors.</param>
internal readonly struct ViscosityByRun(double[] viscosities) : IRunViscosity
{
    /// <inheritdoc/>
    public bool IsOne => false;

    /// <inheritdoc/>
    public Vector<double> Inverse(int at) => Vector<double>.One / new Vector<double>(viscosities, at);

    /// <inheritdoc/>
    public Vector<double> Square(int at) => new Vector<double>(viscosities, at) * new Vector<double>(viscosities, at);

    /// <inheritdoc/>
    public Vector<double> Inverse(int[] runs, int at) => Vector<double>.One / Gather(runs, at);

    /// <inheritdoc/>
    public Vector<double> Square(int[] runs, int at)
    {
        var gathered = Gather(runs, at);
        return gathered * gathered;
    }

    Vector<double> Gather(int[] runs, int at)
    {
        Span<double> gathered = stackalloc double[Vector<double>.Count];
        for (var k = 0; k < gathered.Length; k++) gathered[k] = viscosities[runs[at + k]];
        return new(gathered);
    }
}
