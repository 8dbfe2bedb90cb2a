using FlowCalc.Layouts;
using FlowCalc.Routes;
using FlowCalc.Stock;

namespace FlowCalc.Explanations;

/// <summary>What is ordered of a tube.</summary>
internal static class OrderSteps
{
    /// <summary>Writes an order down.</summary>
    /// <param name="log">Where to; it stands at the tube.</param>
    /// <param name="layout">The layout.</param>
    /// <param name="list">The cut list.</param>
    /// <param name="order">The order.</param>
    /// <param name="bench">How it is cut.</param>
    public static void Add(StepLog log, Layout layout, CutList list, TubeOrder order, Bench bench)
    {
        log.Sum(OrderEquations.TotalLength, "finished pieces", order.Finished.Meters, order.Pieces.Select(piece => piece.Cut!.Value.Meters));
        double[] sawn = [.. order.Pieces.Select(piece => piece.Sawn!.Value.Meters)];
        var sum = log.Sum(OrderEquations.TotalLength, "sawn pieces", sawn.Sum(), sawn);
        log.Add(OrderEquations.Order, "order", order.Order.Meters, sum, sawn.Length, bench.Kerf, bench.Spare);
        var (tube, bore) = (order.Tube, order.Tube.Bore.Meters);
        if (order.Mass is { } mass && tube.OutsideDiameter is { } outside && TubeMaterial.Of(tube.Material) is { } material)
        {
            double[] lengths = [.. order.Pieces.Select(piece => piece.Exact.Meters)];
            var exact = log.Sum(OrderEquations.TotalLength, "exact lengths", lengths.Sum(), lengths);
            log.Add(OrderEquations.Weight, "mass", mass.Kilograms, outside.Meters, bore, exact, material.Density.KilogramsPerCubicMeter);
        }
        double[] runs = [.. list.Runs.Where(cut => layout.Runs[cut.Run].Tube == tube).Select(cut => cut.Length.Meters)];
        var developed = log.Sum(OrderEquations.TotalLength, "runs", runs.Sum(), runs);
        log.Add(OrderEquations.Filled, "volume", order.Filled.CubicMeters, bore, developed);
    }
}
