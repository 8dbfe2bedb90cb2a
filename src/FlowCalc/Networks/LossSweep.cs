using System.Numerics;
using System.Runtime.InteropServices;

namespace FlowCalc.Networks;

/// <summary>Fills in the loss of every run and its derivatives at the present flows.</summary>
internal static class LossSweep
{
    /// <summary>Straight tube and constant coefficients, bends, throats of fittings and tee legs, in this order.</summary>
    /// <param name="state">The state; <see cref="SteadyState.Loss"/>, <see cref="SteadyState.Slope"/> and <see cref="SteadyState.Cross"/> are overwritten.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    /// <param name="density">Reference density, kg/m³.</param>
    public static void Fill(SteadyState state, double viscosity, double density) => Fill(state, new OneViscosity(viscosity), density);

    /// <summary>The same where each run has a viscosity of its own.</summary>
    /// <typeparam name="TViscosity">How viscosity is told.</typeparam>
    /// <param name="state">The state; <see cref="SteadyState.Loss"/>, <see cref="SteadyState.Slope"/> and <see cref="SteadyState.Cross"/> are overwritten.</param>
    /// <param name="viscosity">Dynamic viscosity in each run.</param>
    /// <param name="density">Reference density, kg/m³.</param>
    public static void Fill<TViscosity>(SteadyState state, TViscosity viscosity, double density) where TViscosity : struct, IRunViscosity
    {
        Tubes(state, viscosity, density);
        Bends(state, viscosity, density);
        Throats(state, viscosity, density);
        Tees(state, density);
    }

    static void Tubes<TViscosity>(SteadyState state, TViscosity viscosity, double density) where TViscosity : struct, IRunViscosity
    {
        var tubes = state.Network.Tubes;
        var perFlow = Vectors(tubes.ReynoldsPerFlow);
        var weights = Vectors(tubes.Weight);
        var roughness = Vectors(tubes.Roughness);
        var constants = Vectors(state.Network.Constant);
        var flows = Vectors(state.Flow);
        var roots = Vectors(state.Root);
        var losses = Vectors(state.Loss);
        var slopes = Vectors(state.Slope);
        var (perViscosity, scale) = (viscosity.Inverse(0), viscosity.Square(0) * (1 / density));
        var perDensity = new Vector<double>(1 / density);
        for (var i = 0; i < flows.Length; i++)
        {
            var flow = flows[i];
            var size = Vector.Abs(flow);
            if (!viscosity.IsOne) (perViscosity, scale) = (viscosity.Inverse(i * Vector<double>.Count), viscosity.Square(i * Vector<double>.Count) * (1 / density));
            var reynoldsPerFlow = perFlow[i] * perViscosity;
            FrictionKernel.Step(size * reynoldsPerFlow, roughness[i], ref roots[i], out var group, out var groupSlope);
            var weight = weights[i] * scale;
            var constant = constants[i] * perDensity;
            losses[i] = Vector.CopySign(weight * group, flow) + constant * (size * flow);
            slopes[i] = weight * reynoldsPerFlow * groupSlope + 2 * (constant * size);
        }
    }

    static void Bends<TViscosity>(SteadyState state, TViscosity viscosity, double density) where TViscosity : struct, IRunViscosity
    {
        var bends = state.Network.Bends;
        var perDensity = 1 / density;
        var memory = state.LastBends;
        for (var i = 0; i < bends.Count; i += Vector<double>.Count)
        {
            var flow = Gather(state, bends.Run, i);
            var reynoldsPerFlow = new Vector<double>(bends.ReynoldsPerFlow, i) * viscosity.Inverse(bends.Run, i);
            var reynolds = Vector.Abs(flow) * reynoldsPerFlow;
            if (!memory.TryRecall(i, reynolds, out var group, out var slope))
            {
                var root = new Vector<double>(state.BendRoot, i);
                BendKernel.Step(bends, i, reynolds, ref root, out group, out slope);
                root.CopyTo(state.BendRoot, i);
                if (memory.IsAllowed) memory.Keep(i, reynolds, group, slope);
            }
            var weight = new Vector<double>(bends.Weight, i) * viscosity.Square(bends.Run, i) * perDensity;
            Scatter(state, bends.Run, i, bends.Count, flow, weight * group, weight * reynoldsPerFlow * slope);
        }
        memory.Steps++;
    }

    static void Throats<TViscosity>(SteadyState state, TViscosity viscosity, double density) where TViscosity : struct, IRunViscosity
    {
        var throats = state.Network.Throats;
        for (var i = 0; i < throats.Count; i += Vector<double>.Count)
        {
            var flow = Gather(state, throats.Run!, i);
            var reynoldsPerFlow = new Vector<double>(throats.ReynoldsPerFlow, i) * viscosity.Inverse(throats.Run!, i);
            var root = new Vector<double>(state.ThroatRoot, i);
            FrictionKernel.Step(Vector.Abs(flow) * reynoldsPerFlow, new(throats.Roughness, i), ref root, out var group, out var slope);
            root.CopyTo(state.ThroatRoot, i);
            var weight = new Vector<double>(throats.Weight, i) * viscosity.Square(throats.Run!, i) * (1 / density);
            Scatter(state, throats.Run!, i, throats.Count, flow, weight * group, weight * reynoldsPerFlow * slope);
        }
    }

    static void Tees(SteadyState state, double density)
    {
        var tees = state.Network.Tees;
        var parent = state.Network.Parent;
        var perDensity = 1 / density;
        for (var i = 0; i < tees.Run.Length; i++)
        {
            var run = tees.Run[i];
            var own = state.Flow[run];
            var inlet = state.Flow[parent[run]];
            // A leg may not carry more than the inlet; until the flows say so too, the split counts as whole.
            var isInside = own >= 0 && own < inlet;
            var split = isInside ? own / inlet : own > 0 ? 1 : 0;
            var cube = split * split * split;
            var eighth = tees.Eighth[i] * (cube * cube) * own;
            var mixed = tees.Mixed[i];
            var ownSize = tees.Own[i] * Math.Abs(own);
            var inletSize = tees.Inlet[i] * Math.Abs(inlet);
            state.Loss[run] += (ownSize * own + mixed * own * inlet + inletSize * inlet + eighth * own) * perDensity;
            state.Slope[run] += (2 * ownSize + mixed * inlet + (isInside ? 8 : 2) * eighth) * perDensity;
            state.Cross[run] = (mixed * own + 2 * inletSize - (isInside ? 6 * eighth * split : 0)) * perDensity;
        }
    }

    static Span<Vector<double>> Vectors(double[] padded) => MemoryMarshal.Cast<double, Vector<double>>(padded.AsSpan());

    static Vector<double> Gather(SteadyState state, int[] run, int at)
    {
        Span<double> flows = stackalloc double[Vector<double>.Count];
        for (var k = 0; k < flows.Length; k++) flows[k] = state.Flow[run[at + k]];
        return new(flows);
    }

    static void Scatter(SteadyState state, int[] run, int at, int count, Vector<double> flow, Vector<double> loss, Vector<double> slope)
    {
        Span<double> losses = stackalloc double[Vector<double>.Count], slopes = stackalloc double[Vector<double>.Count];
        Vector.CopySign(loss, flow).CopyTo(losses);
        slope.CopyTo(slopes);
        var end = Math.Min(losses.Length, count - at);
        for (var k = 0; k < end; k++)
        {
            state.Loss[run[at + k]] += losses[k];
            state.Slope[run[at + k]] += slopes[k];
        }
    }
}
