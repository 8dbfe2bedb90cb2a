using FlowCalc.Api.Answers;
using FlowCalc.Api.CutLists;
using FlowCalc.Exchange;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Exchange;

/// <summary>A steady flow as one table: a row a point, then a row a run, each with its name in an exchanged file.</summary>
internal static class FlowTable
{
    /// <summary>The table, UTF-8. Numbers are not rounded; units stand in the columns' names.</summary>
    public static byte[] Write(Layout layout, FlowResult flow, UnitWriter write)
    {
        var (pressure, mass, volume, speed) = (Unit(QuantityKind.Pressure), Unit(QuantityKind.MassFlow), Unit(QuantityKind.VolumeFlow), Unit(QuantityKind.Speed));
        var table = new CsvText();
        table.Add("kind").Add("id").Add("name_in_file").Add($"pressure_{pressure}").Add($"mass_flow_{mass}").Add($"volume_flow_{volume}").Add($"velocity_{speed}").Add("share").EndRow();
        var nozzles = flow.Nozzles.ToDictionary(nozzle => nozzle.Point);
        for (var at = 0; at < layout.Points.Length; at++)
        {
            table.Add(Kind(layout.Points[at])).Add(layout.Points[at].Id).Add(EpanetInput.PointName(at)).Add(write.Gauge(flow.PointPressures[at], layout.AmbientPressure).Value);
            if (nozzles.TryGetValue(at, out var nozzle)) table.Add(write.Of(nozzle.MassFlow).Value).Add(write.Of(nozzle.VolumeFlow).Value).Skip(1).Add(UnitWriter.Plain(nozzle.Share));
            else table.Skip(4);
            table.EndRow();
        }
        var total = flow.Supply!.MassFlow;
        for (var at = 0; at < layout.Runs.Length; at++)
        {
            var run = flow.Runs[at];
            table.Add("run").Add(layout.Runs[at].Id).Add(EpanetInput.RunName(at)).Add(write.Gauge(run.PressureOut, layout.AmbientPressure).Value)
                .Add(write.Of(run.MassFlow).Value).Add(write.Of(total.KilogramsPerSecond > 0 ? flow.Supply.VolumeFlow * (run.MassFlow / total) : flow.Supply.VolumeFlow).Value).Add(write.Of(run.Velocity).Value).Skip(1).EndRow();
        }
        return table.ToUtf8();

        string Unit(QuantityKind kind) => write.Of(0, kind).Unit.Replace(' ', '_').Replace('/', '_');
    }

    static string Kind(LayoutPoint point) => point switch { SupplyPoint => "supply", Nozzle => "nozzle", Tee => "tee", Reducer => "reducer", Cap => "cap", _ => "junction" };
}
