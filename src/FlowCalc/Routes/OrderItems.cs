using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Counts what is ordered besides tube.</summary>
static class OrderItems
{
    const double HolePlay = 0.0005;
    const string Junctions = "without loss in the flow: say which real fitting stands for it";

    /// <summary>One item a kind and name, by first use: points, then fittings, clips and sleeves.</summary>
    public static ImmutableArray<OrderItem> Of(Layout layout, ImmutableArray<RunCut> runs, CancellationToken cancellation)
    {
        var items = new ItemCounts();
        var leaving = LeavingRuns.Of(layout);
        var feeds = new Run?[layout.Points.Length];
        foreach (var run in layout.Runs) feeds[run.To] = run;
        for (var point = 0; point < layout.Points.Length; point++)
        {
            if ((point & 0xFFF) == 0) cancellation.ThrowIfCancellationRequested();
            AddPoint(items, layout, point, feeds[point], leaving.Of(point));
        }
        foreach (var cut in runs)
        {
            if ((cut.Run & 0xFFF) == 0) cancellation.ThrowIfCancellationRequested();
            var run = layout.Runs[cut.Run];
            foreach (var placed in run.Fittings) AddFitting(items, placed, run.Tube);
        }
        foreach (var cut in runs)
        {
            var tube = layout.Runs[cut.Run].Tube;
            var size = tube.OutsideDiameter;
            items.Add(new OrderItem("clip", size is null ? TubeLabel.Of(tube) : Millimetres(size.Value), cut.Clips.Count + cut.Clips.Unplaced, size, null,
                "lined and of metal; over a sleeve a size larger"));
            foreach (var sleeve in cut.Sleeves)
                items.Add(new OrderItem("sleeve", Millimetres(sleeve.InsideDiameter), 1, sleeve.InsideDiameter, sleeve.Length, "put on before the second fitting; over a skin its own size larger"));
        }
        return items.ToArray();
    }

    static void AddPoint(ItemCounts items, Layout layout, int index, Run? feed, ReadOnlySpan<int> leaving)
    {
        string Leg(int leg) => TubeLabel.Of(layout.Runs[leg].Tube);
        var fed = feed is null ? "" : TubeLabel.Of(feed.Tube);
        switch (layout.Points[index])
        {
            case SupplyPoint:
                items.Add(new OrderItem("supply", leaving.IsEmpty ? "" : Leg(leaving[0]), 1, null, null, "the connection at the bottle or supply"));
                break;
            case Tee tee when leaving.Length == 2:
                var (run, branch) = layout.Runs[leaving[0]].Leaves == TeePort.Branch ? (leaving[1], leaving[0]) : (leaving[0], leaving[1]);
                items.Add(new OrderItem("tee", tee.FedThrough == TeePort.Run ? $"run {fed}, run {Leg(run)}, branch {Leg(branch)}" : $"run {Leg(run)}, run {Leg(branch)}, branch {fed}", 1, null, null,
                    tee.Body is null ? null : tee.Body == Losses.TeeBody.Smooth ? "smooth body" : "threaded body"));
                break;
            case Reducer:
                items.Add(new OrderItem("reducer", leaving.IsEmpty ? fed : $"{fed} to {Leg(leaving[0])}", 1, null, null, null));
                break;
            case Junction:
                items.Add(new OrderItem("junction", fed, 1, null, null, Junctions));
                break;
            case Cap:
                items.Add(new OrderItem("cap", fed, 1, null, null, null));
                break;
            case Nozzle nozzle:
                items.Add(new OrderItem("nozzle", nozzle.Type ?? Described(nozzle), 1, null, null, $"on {fed}"));
                break;
        }
    }

    static string Described(Nozzle nozzle) => nozzle.Orifice is { } holes
        ? string.Create(CultureInfo.InvariantCulture, $"{holes.Count} x {Millimetres(holes.Diameter)}, discharge coefficient {holes.DischargeCoefficient}")
        : string.Create(CultureInfo.InvariantCulture, $"K {nozzle.KFactor * 60_000 * Math.Sqrt(1e5):0.######} L/min/bar^0.5");

    static void AddFitting(ItemCounts items, PlacedFitting placed, Tube tube)
    {
        var fitting = placed.Fitting;
        var isBulkhead = fitting.Kind == Fitting.BulkheadUnion;
        Length? hole = isBulkhead && fitting.Thread is { } thread ? thread + Length.FromMeters(HolePlay) : null;
        items.Add(new OrderItem(fitting.Kind, $"{fitting.Name ?? fitting.Kind} on {TubeLabel.Of(tube)}", placed.Count, hole, null,
            isBulkhead ? "two joints; the size is that of the hole; a seal as good as the wall" : null));
    }

    static string Millimetres(Length length) => string.Create(CultureInfo.InvariantCulture, $"{length.Millimeters:0.###} mm");

    /// <summary>Items by first use, equal ones counted together.</summary>
    sealed class ItemCounts
    {
        readonly Dictionary<(string Kind, string Name, Length? Size, string? Note), int> places = [];
        readonly List<OrderItem> items = [];

        public void Add(OrderItem item)
        {
            if (item.Count == 0) return;
            var key = (item.Kind, item.Name, item.Size, item.Note);
            if (places.TryGetValue(key, out var place))
                items[place] = items[place] with { Count = items[place].Count + item.Count, Length = item.Length is { } length ? items[place].Length + length : null };
            else
            {
                places.Add(key, items.Count);
                items.Add(item);
            }
        }

        public ImmutableArray<OrderItem> ToArray() => [.. items];
    }
}
