using FlowCalc.Layouts;
using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Flows;

/// <summary>
/// Books the loss of every run by kind, from the flows alone and by the scalar loss functions, so that it is also a check on the
/// vectorised sums that the solver worked with.
/// </summary>
internal static class LossLedger
{
    /// <summary>Losses of each run in solve order.</summary>
    /// <param name="compiled">The compiled layout.</param>
    /// <param name="flow">Mass flow of each run, kg/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="viscosityOf">Dynamic viscosity in a run, Pa·s.</param>
    /// <param name="cancellationToken">Asked now and then.</param>
    public static LossParts[] Book(LayoutNetwork compiled, double[] flow, double density, Func<int, double> viscosityOf, CancellationToken cancellationToken)
    {
        var network = compiled.Network;
        var parts = new LossParts[network.Count];
        int bend = 0, throat = 0, tee = 0;
        for (var j = 0; j < parts.Length; j++)
        {
            if (j % 4096 == 0) cancellationToken.ThrowIfCancellationRequested();
            var (m, viscosity) = (flow[j], viscosityOf(j));
            var dynamic = m * Math.Abs(m) / density;
            var tube = Friction(network.Tubes, j, m, density, viscosity);
            var rise = HydrostaticRise.PressureDrop(density, network.Rise[j]);
            if (j == 0)
            {
                parts[0] = new() { Outlet = tube + network.Constant[0] * dynamic, Rise = rise };
                continue;
            }
            double bends = 0, fittings = compiled.FittingConstants[j] * dynamic, tees = 0;
            for (; bend < network.Bends.Count && network.Bends.Run[bend] == j; bend++) bends += Bend(network.Bends, bend, m, density, viscosity);
            for (; throat < network.Throats.Count && network.Throats.Run![throat] == j; throat++) fittings += Friction(network.Throats, throat, m, density, viscosity);
            for (; tee < network.Tees.Run.Length && network.Tees.Run[tee] == j; tee++) tees += Leg(network.Tees, tee, m, flow[network.Parent[j]], density);
            parts[j] = new(0, tube, bends, tees, fittings, compiled.BoreChangeConstants[j] * dynamic, rise);
        }
        return parts;
    }

    /// <summary>Friction of a length of tube or of a tight fitting, Pa.</summary>
    /// <param name="segments">The lengths.</param>
    /// <param name="i">Which of them.</param>
    /// <param name="flow">Mass flow, kg/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    public static double Friction(FrictionSegments segments, int i, double flow, double density, double viscosity)
    {
        if (segments.Weight[i] == 0) return 0;
        var reynolds = flow * segments.ReynoldsPerFlow[i] / viscosity;
        var (group, _) = DarcyFriction.PressureGroup(reynolds, 3.7 * segments.Roughness[i]);
        return segments.Weight[i] * (viscosity * viscosity / density) * group;
    }

    /// <summary>Equal bends, Pa.</summary>
    /// <param name="bends">The bends.</param>
    /// <param name="i">Which of them.</param>
    /// <param name="flow">Mass flow, kg/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    /// <param name="viscosity">Dynamic viscosity, Pa·s.</param>
    public static double Bend(BendSet bends, int i, double flow, double density, double viscosity)
    {
        var reynolds = flow * bends.ReynoldsPerFlow[i] / viscosity;
        var (group, _) = SmoothBend.LossGroup(reynolds, 3.7 * bends.Roughness[i], Shape(bends, i));
        return bends.Weight[i] * (viscosity * viscosity / density) * group;
    }

    /// <summary>Shape of one of equal bends.</summary>
    /// <param name="bends">The bends.</param>
    /// <param name="i">Which of them.</param>
    public static BendShape Shape(BendSet bends, int i)
    {
        var dean = bends.DeanPerReynolds[i];
        return new BendShape(bends.PerFriction[i], bends.Constant[i], bends.ArcOverBore[i], 0.5 / (dean * dean));
    }

    /// <summary>The leg of a tee, Pa.</summary>
    /// <param name="tees">The legs.</param>
    /// <param name="i">Which of them.</param>
    /// <param name="own">Mass flow of the leg, kg/s.</param>
    /// <param name="inlet">Mass flow into the tee, kg/s.</param>
    /// <param name="density">Density, kg/m³.</param>
    public static double Leg(TeeLegs tees, int i, double own, double inlet, double density) =>
        new TeeLeg(tees.Own[i], tees.Mixed[i], tees.Inlet[i], tees.Eighth[i]).Loss(own, inlet).Loss / density;
}
