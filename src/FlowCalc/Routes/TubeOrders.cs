using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Routes;

/// <summary>Gathers the pieces of each tube, and packs them into its stock.</summary>
static class TubeOrders
{
    /// <summary>One order a tube, by first use.</summary>
    public static ImmutableArray<TubeOrder> Of(Layout layout, ImmutableArray<RunCut> runs, Bench bench, AssumptionLog log, CancellationToken cancellation)
    {
        var search = new SearchEffort();
        Dictionary<Tube, Gathered> byTube = [];
        foreach (var cut in runs)
        {
            var tube = layout.Runs[cut.Run].Tube;
            if (!byTube.TryGetValue(tube, out var gathered)) byTube.Add(tube, gathered = new Gathered(tube, cut.Run));
            gathered.Pieces.AddRange(cut.Pieces.Where(piece => piece.Cut is not null));
            gathered.Length += cut.Length.Meters;
        }
        return [.. byTube.Values.OrderBy(gathered => gathered.FirstRun).Select(gathered => One(layout, gathered, bench, log, search, cancellation))];
    }

    static TubeOrder One(Layout layout, Gathered gathered, Bench bench, AssumptionLog log, SearchEffort search, CancellationToken cancellation)
    {
        var tube = gathered.Tube;
        ImmutableArray<TubePiece> pieces = [.. gathered.Pieces];
        double finished = 0, sawn = 0, exact = 0;
        foreach (var piece in pieces)
        {
            finished += piece.Cut!.Value.Meters;
            exact += piece.Exact.Meters;
            sawn += piece.Sawn!.Value.Meters + bench.Kerf;
        }
        var ordered = sawn * (1 + bench.Spare);
        var bore = tube.Bore.Meters;
        var plan = StockOf(layout, tube) is { } stock ? StockPacking.Pack(pieces, stock, bench.Kerf, ordered, search, cancellation) : null;
        return new TubeOrder(tube, pieces, Length.FromMeters(finished), Length.FromMeters(ordered), MassOf(gathered, exact, log),
            Volume.FromCubicMeters(Math.PI / 4 * bore * bore * gathered.Length), plan);
    }

    /// <summary>The stock of a tube: its own, else the one for all others; null for none.</summary>
    public static TubeStock? StockOf(Layout layout, Tube tube)
    {
        TubeStock? other = null;
        if (layout.Cutting is not { } cutting) return null;
        foreach (var stock in cutting.Stock)
        {
            if (stock.Tube is null) other = stock;
            else if (stock.Tube == tube.Name) return stock;
        }
        return other;
    }

    static Mass? MassOf(Gathered gathered, double length, AssumptionLog log)
    {
        var tube = gathered.Tube;
        if (tube.OutsideDiameter is not { Meters: var outside } || TubeMaterial.Of(tube.Material) is not { } material) return null;
        var bore = tube.Bore.Meters;
        log.Add("/runs", gathered.FirstRun, "/tube", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"density {material.Density.KilogramsPerCubicMeter} kg/m3"), "handbook value of the material, from memory");
        return Mass.FromKilograms(Math.PI / 4 * (outside * outside - bore * bore) * length * material.Density.KilogramsPerCubicMeter);
    }

    /// <summary>What is gathered of a tube; its length is developed, m.</summary>
    sealed class Gathered(Tube tube, int firstRun)
    {
        public Tube Tube { get; } = tube;

        public int FirstRun { get; } = firstRun;

        public List<TubePiece> Pieces { get; } = [];

        public double Length { get; set; }
    }
}
