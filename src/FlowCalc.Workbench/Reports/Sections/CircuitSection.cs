using System.Collections.Immutable;
using FlowCalc.Checks;
using FlowCalc.Circuits;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>What the firing circuit does; none of a document without one.</summary>
static class CircuitSection
{
    public static ReportSection? Of(LayoutCheck check, Shown shown)
    {
        if (check is not { Circuit.Result: var result, Layout.Circuit: { } circuit }) return null;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph("Currents of firing are those of the source at its weakest, currents of testing those at its strongest. Nothing warms up, and wires and coils have no inductance."));
        blocks.Add(ReportTable.Of("What every push does in every state", ["state", "pressed", "actuators", "lamps", "#current of the source"], result.Rows.Select(row => new[]
        {
            State(row.State), Name(circuit, row.Push), string.Join(", ", row.Actuators.Select(one => Does(circuit, one))), string.Join(", ", row.Lamps.Select(one => Shows(circuit, one))), Range(row.SourceLowest, row.SourceHighest, shown),
        })));
        blocks.Add(ReportTable.Of("Firing", ["pressed", "actuator", "#current", "#all-fire", "#current over all-fire"], result.Presses.SelectMany(press => press.Fired.Select(index =>
        {
            var (actuator, current) = ((Actuator)circuit.Parts[index], Math.Abs(press.Currents.Parts[index]));
            return new[] { Name(circuit, press.Push), actuator.Name, Amperes(current, shown), Amperes(actuator.AllFire.Amperes, shown), Shown.Number(current / actuator.AllFire.Amperes) };
        }))));
        blocks.Add(ReportTable.Of("The most that an actuator gets where nothing is meant to fire, one lamp failed", ["actuator", "#current", "#allowed", "state", "pressed"], result.TestCurrents.Select(test => new[]
        {
            circuit.Parts[test.Actuator].Name, Amperes(test.Current, shown), Amperes(test.Limit, shown), State(test.State), Name(circuit, test.Push),
        })));
        blocks.Add(Faults(circuit, result));
        return new("Firing circuit", blocks.ToImmutable());
    }

    // The faults that matter: what keeps something from firing, or fires it.
    static ReportBlock Faults(Circuit circuit, CircuitResult result)
    {
        var grave = result.Faults.Where(fault => fault.KeepsFromFiring || fault.FiresUnasked).OrderBy(fault => fault.IsShown).ToArray();
        return grave.Length == 0
            ? new ReportParagraph($"None of {result.Faults.Length} single faults that were tried keeps anything from firing, and none fires anything.")
            : ReportTable.Of($"Single faults that keep something from firing or fire it, of {result.Faults.Length} that were tried", ["fault", "at", "keeps from firing", "fires unasked", "a lamp shows it"], grave.Select(fault => new[]
            {
                fault.Fault.Kind switch { CircuitFaultKind.Open => "open", CircuitFaultKind.Chassis => "touches the chassis", _ => "corroded" }, circuit.PlaceOf(fault.Fault), Yes(fault.KeepsFromFiring), Yes(fault.FiresUnasked), Yes(fault.IsShown),
            }));
    }

    static string Does(Circuit circuit, CurrentRange range)
    {
        var actuator = (Actuator)circuit.Parts[range.Part];
        return $"{actuator.Name} {actuator.EffectOf(range) switch { ActuatorEffect.Fires => "fires", ActuatorEffect.MayFire => "may fire", _ => "rests" }}";
    }

    static string Shows(Circuit circuit, CurrentRange range)
    {
        var lamp = (Lamp)circuit.Parts[range.Part];
        return $"{lamp.Name} {lamp.LightOf(range) switch { LampLight.Lit => "lit", LampLight.Unsure => "perhaps lit", _ => "dark" }}";
    }

    static string Range(double low, double high, Shown shown) => $"{Amperes(low, shown)} to {Amperes(high, shown)}";

    static string State(CircuitState state) => state switch { CircuitState.Off => "off", CircuitState.Test => "test", _ => "armed" };

    static string Name(Circuit circuit, int part) => part < 0 ? "nothing" : circuit.Parts[part].Name;

    static string Yes(bool holds) => holds ? "yes" : "no";

    static string Amperes(double amperes, Shown shown) => shown.Of(Math.Abs(amperes) < CircuitResult.Dead ? 0 : amperes, QuantityKind.Current);
}
