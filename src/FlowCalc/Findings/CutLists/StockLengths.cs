using FlowCalc.Quantities;
using FlowCalc.Routes;

namespace FlowCalc.Findings.CutLists;

/// <summary>Pieces longer than the stock, and tubes without one.</summary>
static class StockLengths
{
    public static void Find(JudgedCutList judged, FindingList findings)
    {
        List<Hit>? tooLong = null, unknown = null;
        foreach (var order in judged.CutList.Tubes)
        {
            judged.Cancellation.ThrowIfCancellationRequested();
            if (order.Stock is { } plan) AddTooLong(judged, order, plan, ref tooLong);
            else if (!order.Pieces.IsEmpty)
                (unknown ??= []).Add(new Hit(order.Pieces[0].Run, TubeLabel.Of(order.Tube), Severity.Note, order.Order.Meters, order.Order.Meters, 0));
        }
        findings.Add(FindingCodes.StockTooShort, "the document's stock", QuantityKind.Length, "piece", tooLong, hit =>
            $"A piece of {Wording.Id(hit.Id)} is sawn {judged.Text(hit.Measured, hit.Bound)} long and the longest stock of its tube is {judged.Text(hit.Bound)}: "
            + "longer stock, or a union at a place that the flow is solved with");
        findings.Add(FindingCodes.StockUnknown, "the document", QuantityKind.Length, "tube", unknown, hit =>
            $"No stock is stated for {Wording.Id(hit.Id)}: its pieces are not packed; {judged.Text(hit.Measured)} are to be ordered with the spare");
    }

    static void AddTooLong(JudgedCutList judged, TubeOrder order, StockPlan plan, ref List<Hit>? hits)
    {
        if (plan.TooLong.IsEmpty) return;
        var longest = Longest(judged, order);
        foreach (var place in plan.TooLong)
        {
            var piece = order.Pieces[place];
            var sawn = piece.Sawn!.Value.Meters;
            (hits ??= []).Add(new Hit(piece.Run, judged.RunId(piece.Run), Severity.Fail, sawn, sawn, longest));
        }
    }

    static double Longest(JudgedCutList judged, TubeOrder order) =>
        TubeOrders.StockOf(judged.Layout, order.Tube)!.Lengths.Max(length => length.Meters);
}
