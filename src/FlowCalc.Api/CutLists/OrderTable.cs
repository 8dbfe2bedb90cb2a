using FlowCalc.Api.Answers;
using FlowCalc.Findings;
using FlowCalc.Routes;

namespace FlowCalc.Api.CutLists;

/// <summary>The order of a cut list as a table: tube, bars, fittings, nozzles, clips and sleeves; then what was found, and the cautions.</summary>
internal static class OrderTable
{
    /// <summary>The table, UTF-8.</summary>
    public static byte[] Write(CutListWork work, CsvLengths write)
    {
        var table = new CsvText();
        table.Add("kind").Add("name").Add("count").Add($"size_{write.Unit}").Add($"length_{write.Unit}").Add("note").EndRow();
        foreach (var order in work.List.Tubes) AddTube(table, write, order);
        foreach (var item in work.List.Items) table.Add(item.Kind).Add(item.Name).Add(item.Count).Add(write.Of(item.Size)).Add(write.Of(item.Length)).Add(item.Note).EndRow();
        foreach (var finding in work.Judgement.Findings) AddSaid(table, SeverityWord.Of(finding.Severity), finding.Code, finding.Message);
        foreach (var caution in Cautions.For(work.Layout)) AddSaid(table, "caution", null, caution);
        return table.ToUtf8();
    }

    static void AddTube(CsvText table, CsvLengths write, TubeOrder order)
    {
        var label = TubeLabel.Of(order.Tube);
        table.Add("tube").Add(label).Add(order.Pieces.Length).Add(write.Of(order.Tube.OutsideDiameter)).Add(write.Of(order.Order)).Add("count: pieces; length: all that is sawn, with the spare").EndRow();
        if (order.Stock is not { } plan) return;
        var kind = plan.IsCoil ? "coil" : "bar";
        foreach (var alike in plan.Bars.GroupBy(bar => bar.Length).OrderByDescending(alike => alike.Key))
            table.Add(kind).Add(label).Add(alike.Count()).Add(write.Of(order.Tube.OutsideDiameter)).Add(write.Of(alike.Key)).Add("length: of one").EndRow();
        if (plan.SpareBars > 0) table.Add($"spare {kind}").Add(label).Add(plan.SpareBars).Add(write.Of(order.Tube.OutsideDiameter)).Skip(1).Add("of the longest stock").EndRow();
    }

    static void AddSaid(CsvText table, string kind, string? name, string text) => table.Add(kind).Add(name).Skip(3).Add(text).EndRow();
}
