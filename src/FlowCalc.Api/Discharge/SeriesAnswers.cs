using System.Collections.Immutable;
using System.Runtime.InteropServices;
using FlowCalc.Api.Answers;
using FlowCalc.Discharge;
using FlowCalc.Layouts;

namespace FlowCalc.Api.Discharge;

/// <summary>Writes a series as bare numbers of one unit each.</summary>
internal static class SeriesAnswers
{
    /// <summary>The series.</summary>
    /// <exception cref="NotFiniteException">A number of it is not finite.</exception>
    public static SeriesAnswer Of(Layout layout, DischargeSeries series, UnitWriter write)
    {
        var ambient = layout.AmbientPressure;
        return new(
            Each(series.Time, time => write.Of(time).Value),
            Each(series.BottlePressure, pressure => write.Gauge(pressure, ambient).Value),
            Each(series.LiquidInBottle, mass => write.Of(mass).Value),
            [.. series.Nozzles.Select(nozzle => new NozzleSeriesAnswer(
                layout.Points[nozzle.Point].Id, Each(nozzle.MassFlow, flow => write.Of(flow).Value), Each(nozzle.Pressure, pressure => write.Gauge(pressure, ambient).Value)))],
            new(write.Of(series.Time[0]).Unit, write.Gauge(ambient, ambient).Unit, write.Of(series.LiquidInBottle[0]).Unit, write.Of(UnitsNet.MassFlow.Zero).Unit));
    }

    static ImmutableArray<double> Each<T>(ImmutableArray<T> values, Func<T, double> write)
    {
        var written = new double[values.Length];
        for (var i = 0; i < written.Length; i++) written[i] = write(values[i]);
        return ImmutableCollectionsMarshal.AsImmutableArray(written);
    }
}
