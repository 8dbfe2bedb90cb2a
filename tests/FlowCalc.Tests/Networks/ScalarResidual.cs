using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Tests.Networks;

/// <summary>Holds an answer against the equations themselves, with the scalar loss functions and none of the solver's own sums.</summary>
internal static class ScalarResidual
{
    /// <summary>Largest imbalance of mass at a point, relative to the total flow.</summary>
    public static double Mass(SteadyState state)
    {
        var network = state.Network;
        var leaving = new double[network.Count];
        for (var j = 1; j < network.Count; j++) leaving[network.Parent[j]] += state.Flow[j];
        var (path, worst) = (network.Nozzles.ToHashSet(), 0.0);
        for (var j = 0; j < network.Count; j++)
            if (!path.Contains(j))
                worst = Math.Max(worst, Math.Abs(state.Flow[j] - leaving[j]));
        return worst == 0 ? 0 : worst / state.Flow[0];
    }

    /// <summary>Largest imbalance along a run or at an open nozzle, relative to the highest pressure.</summary>
    public static double Pressure(SteadyState state, double density, double viscosity, double reservoirGauge)
    {
        var network = state.Network;
        var highest = Math.Max(Math.Abs(reservoirGauge), state.Potential.Max(Math.Abs));
        var worst = 0.0;
        for (var j = 0; j < network.Count; j++)
        {
            var above = j == 0 ? reservoirGauge : state.Potential[network.Parent[j]];
            worst = Math.Max(worst, Math.Abs(above - Loss(state, j, density, viscosity) - density * 9.80665 * network.Rise[j] - state.Potential[j]));
        }
        for (var i = 0; i < network.Nozzles.Length; i++)
        {
            if (state.IsClosed[i]) continue;
            var (pressure, _) = Orifice.PressureDrop(state.Flow[network.Nozzles[i]] / density, density, network.NozzleArea[i]);
            worst = Math.Max(worst, Math.Abs(pressure - state.Potential[network.Nozzles[i]]));
        }
        return worst / highest;
    }

    static double Loss(SteadyState state, int j, double density, double viscosity)
    {
        var network = state.Network;
        var flow = state.Flow[j];
        var loss = network.Constant[j] * flow * Math.Abs(flow) / density;
        var perFlow = network.Tubes.ReynoldsPerFlow[j] / viscosity;
        var unit = viscosity * viscosity / density;
        loss += network.Tubes.Weight[j] * unit * DarcyFriction.PressureGroup(flow * perFlow, 3.7 * network.Tubes.Roughness[j]).Group;
        for (var i = 0; i < network.Bends.Count; i++)
            if (network.Bends.Run[i] == j)
                loss += network.Bends.Weight[i] * unit * SmoothBend.LossGroup(flow * perFlow, 3.7 * network.Bends.Roughness[i], SmoothBend.Shape(1.5, 3)).Group;
        for (var i = 0; i < network.Tees.Run.Length; i++)
        {
            if (network.Tees.Run[i] != j) continue;
            var inlet = state.Flow[network.Parent[j]];
            loss += (network.Tees.Own[i] * flow * flow + network.Tees.Mixed[i] * flow * inlet + network.Tees.Inlet[i] * inlet * inlet) / density;
            if (flow > 0) loss += network.Tees.Eighth[i] * flow * flow * Math.Pow(flow / inlet, 6) / density;
        }
        return loss;
    }
}
