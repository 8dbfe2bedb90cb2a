using System.Collections.Immutable;
using FlowCalc.Agents;
using UnitsNet;

namespace FlowCalc.Flows;

/// <summary>How far the uncertain choices of the model move a steady flow of an agent that boils.</summary>
/// <param name="Low">Least mass flow.</param>
/// <param name="High">Greatest mass flow.</param>
/// <param name="Shares">Least and greatest share of each nozzle, in the order of <see cref="FlowResult.Nozzles"/>.</param>
/// <param name="From">What was varied, in words.</param>
public sealed record FlowBand(MassFlow Low, MassFlow High, ImmutableArray<ShareBand> Shares, ImmutableArray<string> From)
{
    /// <summary>The band of answers, widened by what tees may do.</summary>
    /// <param name="all">The answers, the answer itself first.</param>
    /// <param name="from">What was varied.</param>
    /// <param name="tees">By which factors tees may change each nozzle's share.</param>
    internal static FlowBand Of(List<FlowResult> all, List<string> from, ImmutableArray<ShareBand> tees)
    {
        var flows = all.ConvertAll(one => one.Supply!.MassFlow);
        if (!tees.IsEmpty) from.Add(TeeQuality.Words);
        var shares = all[0].Nozzles.Select((_, at) =>
        {
            var (low, high) = (all.Min(one => one.Nozzles[at].Share), all.Max(one => one.Nozzles[at].Share));
            return tees.IsEmpty ? new ShareBand(low, high) : new ShareBand(low * tees[at].Low, Math.Min(high * tees[at].High, 1));
        });
        return new(flows.Min(), flows.Max(), [.. shares], [.. from]);
    }

    /// <summary>A nozzle model in words.</summary>
    /// <param name="model">The model.</param>
    internal static string Words(NozzleModel model) => model switch
    {
        NozzleModel.Delayed => "nozzles in which the agent boils late",
        NozzleModel.Equilibrium => "nozzles in equilibrium",
        NozzleModel.Frozen => "nozzles in which nothing boils",
        _ => throw new ArgumentOutOfRangeException(nameof(model), model, "Not a model."),
    };
}
