using System.Collections.Immutable;
using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Editing;

namespace FlowCalc.Studies.Tolerance;

/// <summary>Lists what of a layout may be spread.</summary>
public static class SpreadThings
{
    /// <summary>Path of the charge pressure.</summary>
    public const string ChargePressure = "supply/bottle/chargePressure";

    /// <summary>Path of the fill.</summary>
    public const string Fill = "supply/bottle/fill";

    /// <summary>Path of the temperature.</summary>
    public const string Temperature = "temperature";

    /// <summary>Everything, by kind and then in the document's order.</summary>
    /// <param name="layout">A checked layout.</param>
    /// <param name="answer">What is asked of it.</param>
    public static ImmutableArray<SpreadThing> Of(Layout layout, StudiedAnswer answer)
    {
        ArgumentNullException.ThrowIfNull(layout);
        var things = ImmutableArray.CreateBuilder<SpreadThing>();
        var tubes = RunsByTube(layout);
        foreach (var (path, runs) in tubes)
            things.Add(new($"{path}/{SpreadWords.Of(SpreadKind.Bore)}", SpreadKind.Bore, runs, layout.Runs[runs[0]].Tube.Bore.Meters) { Flaw = bore => PossibleValues.OfBore(layout, runs, bore) });
        foreach (var (path, runs) in tubes)
        {
            var tube = layout.Runs[runs[0]].Tube;
            things.Add(new($"{path}/{SpreadWords.Of(SpreadKind.Roughness)}", SpreadKind.Roughness, runs, tube.Roughness.Meters) { Flaw = roughness => PossibleValues.OfRoughness(tube, roughness) });
        }
        for (var index = 0; index < layout.Runs.Length; index++)
        {
            var run = layout.Runs[index];
            things.Add(new(EditPath.Of("runs", run.Id, "length"), SpreadKind.Length, [index], run.Length.Meters) { Flaw = length => PossibleValues.OfLength(run, length) });
        }
        for (var index = 0; index < layout.Points.Length; index++)
            if (layout.Points[index] is Nozzle nozzle)
                things.Add(new(EditPath.Of("points", nozzle.Id, "kFactor"), SpreadKind.KFactor, [index], nozzle.KFactor) { Flaw = PossibleValues.OfKFactor });
        if (layout.Supply is BottleSupply { Bottle: var bottle })
        {
            if (layout.Agent.Kind != AgentKind.LiquefiedGas)
                things.Add(new(ChargePressure, SpreadKind.ChargePressure, [], bottle.ChargePressure.Pascals)
                {
                    Base = layout.AmbientPressure.Pascals,
                    Flaw = pressure => PossibleValues.OfChargePressure(layout, bottle, pressure),
                });
            if (layout.Agent.Kind != AgentKind.InertGas)
                things.Add(new(Fill, SpreadKind.Fill, [], bottle.Fill.Kilograms) { Flaw = mass => PossibleValues.OfFill(layout, bottle, mass) });
        }
        things.Add(new(Temperature, SpreadKind.Temperature, [], layout.Temperature.Kelvins) { Flaw = kelvins => PossibleValues.OfTemperature(layout, answer, kelvins) });
        return things.DrainToImmutable();
    }

    /// <summary>The path under which the tube of a run is known.</summary>
    /// <param name="run">The run.</param>
    internal static string TubePath(Run run) => run.Tube.Name is { } name ? EditPath.Of("tubes", name) : EditPath.Of("runs", run.Id);

    // In the order of first use.
    static List<(string Path, ImmutableArray<int> Runs)> RunsByTube(Layout layout) =>
        [.. Enumerable.Range(0, layout.Runs.Length).GroupBy(index => TubePath(layout.Runs[index]), StringComparer.Ordinal).Select(group => (group.Key, group.ToImmutableArray()))];
}
