using FlowCalc.Api.Answers;
using FlowCalc.Circuits;
using FlowCalc.Findings;
using FlowCalc.Layouts;
using FlowCalc.Quantities;

namespace FlowCalc.Api.Circuits;

/// <summary>Writes what a circuit does as an answer.</summary>
internal static class CircuitAnswers
{
    /// <summary>The answer.</summary>
    /// <exception cref="NotFiniteException">A number of the result is not finite.</exception>
    public static CircuitAnswer Of(Layout layout, Circuit circuit, CircuitResult result, CircuitJudgement judgement, UnitWriter write) => new(
        SeverityWord.Of(judgement.Verdict),
        [.. judgement.Findings.Select(finding => FindingAnswer.Of(finding, write))],
        Source(circuit.Source, write),
        [.. result.Rows.Select(row => State(circuit, row, write))],
        [.. result.Presses.Select(press => Press(circuit, result, press, write))],
        [.. result.TestCurrents.Select(test => Actuator(circuit, test, write))],
        [.. circuit.Of<Wire>().Select(one => Wire(one.Part, write))],
        [.. result.Fuses.Select(load => Fuse(circuit, load, write))],
        [.. result.Faults.Select(fault => Fault(circuit, fault, write))],
        circuit.Assumptions,
        LimitAnswers.Of(judgement.Limits, write),
        Cautions.OfCircuit(layout),
        Engine.Answer);

    static CircuitSourceAnswer Source(CircuitSource source, UnitWriter write) => new(
        source.Kind switch { SourceKind.Battery => "battery", SourceKind.PowerPack => "power-pack", _ => "capacitor" },
        Volts(source.LowestVoltage.Volts, write), Volts(source.HighestVoltage.Volts, write), Ohms(source.ColdResistance.Ohms, write), Ohms(source.FreshResistance.Ohms, write),
        source.Capacitance is { } capacitance ? write.Of(capacitance.Farads * source.LowestVoltage.Volts * source.LowestVoltage.Volts / 2, QuantityKind.Energy) : null);

    static StateAnswer State(Circuit circuit, StateRow row, UnitWriter write) => new(
        Word(row.State), Name(circuit, row.Push), row.IsFiring, Amperes(row.SourceLowest, write), Amperes(row.SourceHighest, write),
        [.. row.Actuators.Select(range => ActuatorState((Actuator)circuit.Parts[range.Part], range, write))],
        [.. row.Lamps.Select(range => LampState((Lamp)circuit.Parts[range.Part], range, write))]);

    static ActuatorStateAnswer ActuatorState(Actuator actuator, CurrentRange range, UnitWriter write) => new(
        actuator.Name, Amperes(range.Lowest, write), Amperes(range.Highest, write),
        actuator.EffectOf(range) switch { ActuatorEffect.Fires => "fires", ActuatorEffect.MayFire => "may-fire", _ => "rests" });

    static LampStateAnswer LampState(Lamp lamp, CurrentRange range, UnitWriter write) => new(
        lamp.Name, Amperes(range.Lowest, write), Amperes(range.Highest, write),
        lamp.LightOf(range) switch { LampLight.Lit => "lit", LampLight.Unsure => "unsure", _ => "dark" });

    static PressAnswer Press(Circuit circuit, CircuitResult result, FiringPress press, UnitWriter write) => new(
        circuit.Parts[press.Push].Name, Amperes(press.Currents.Source, write),
        press.Shares is { } shares ? new(Plain(shares.Source), Plain(shares.Wires), Plain(shares.Contacts), Plain(shares.Actuators), Plain(shares.Others)) : null,
        [.. press.Fired.Select(index => Fired(circuit, result, press, index, write))],
        [.. circuit.Of<Wire>().Where(one => Math.Abs(press.Currents.Parts[one.Index]) > CircuitResult.Dead).Select(one => Drop(one.Part, Math.Abs(press.Currents.Parts[one.Index]), write))]);

    static FiredAnswer Fired(Circuit circuit, CircuitResult result, FiringPress press, int index, UnitWriter write)
    {
        var actuator = (Actuator)circuit.Parts[index];
        var current = Math.Abs(press.Currents.Parts[index]);
        var pulses = result.Pulses.Where(pulse => pulse.Push == press.Push && pulse.Actuator == index).ToArray();
        Quantity? Of(Func<CapacitorPulse, double> value, QuantityKind kind) => pulses is [var pulse] && !double.IsPositiveInfinity(value(pulse)) ? write.Of(value(pulse), kind) : null;
        return new(
            actuator.Name, Amperes(current, write), Volts(current * actuator.Resistance.Ohms, write), Plain(current / actuator.AllFire.Amperes), press.CutOff.Contains(index),
            Of(pulse => pulse.TimeConstant, QuantityKind.Time), Of(pulse => pulse.Above, QuantityKind.Time), Of(pulse => pulse.Energy, QuantityKind.Energy));
    }

    static WireDropAnswer Drop(Wire wire, double current, UnitWriter write) => new(wire.Name, Amperes(current, write), Volts(current * wire.Resistance.Ohms, write));

    static ActuatorAnswer Actuator(Circuit circuit, TestCurrent test, UnitWriter write)
    {
        var actuator = (Actuator)circuit.Parts[test.Actuator];
        return new(
            actuator.Name, Ohms(actuator.Resistance.Ohms, write), Amperes(actuator.AllFire.Amperes, write), actuator.NoFire is { } noFire ? Amperes(noFire.Amperes, write) : null,
            Amperes(test.Current, write), Amperes(test.Sound, write), Amperes(test.Limit, write), Word(test.State), Name(circuit, test.Push), Name(circuit, test.Lamp));
    }

    static WireAnswer Wire(Wire wire, UnitWriter write) => new(
        wire.Name, Ohms(wire.Resistance.Ohms, write), write.Of(wire.Make?.Length), wire.Make is { } make ? write.Of(make.CopperArea, QuantityKind.Area) : null, wire.Make?.Gauge,
        wire.Make is { } made ? write.Of(made.Temperature.Kelvins, QuantityKind.Temperature) : null);

    static FuseAnswer Fuse(Circuit circuit, FuseLoad load, UnitWriter write)
    {
        var fuse = (Fuse)circuit.Parts[load.Fuse];
        Quantity? Of(double? seconds) => seconds is { } known && !double.IsPositiveInfinity(known) ? write.Of(known, QuantityKind.Time) : null;
        return new(fuse.Name, Amperes(fuse.Rating.Amperes, write), Amperes(load.Current, write), Of(load.Pulse), Of(load.Holds), Of(load.Opens), fuse.IsBlade);
    }

    static CircuitFaultAnswer Fault(Circuit circuit, FaultCase fault, UnitWriter write) => new(
        fault.Fault.Kind switch { CircuitFaultKind.Open => "open", CircuitFaultKind.Chassis => "chassis", _ => "corroded" },
        circuit.PlaceOf(fault.Fault),
        UnitWriter.Plain(fault.Margin), fault.KeepsFromFiring, fault.IsShown, fault.FiresUnasked, Plain(fault.Unasked), Amperes(fault.SourceCurrent, write));

    static string? Name(Circuit circuit, int part) => part < 0 ? null : circuit.Parts[part].Name;

    static string Word(CircuitState state) => state switch { CircuitState.Off => "off", CircuitState.Test => "test", _ => "armed" };

    static double Plain(double number) => UnitWriter.Plain(number);

    static Quantity Amperes(double amperes, UnitWriter write) => write.Of(amperes, QuantityKind.Current);

    static Quantity Volts(double volts, UnitWriter write) => write.Of(volts, QuantityKind.Voltage);

    static Quantity Ohms(double ohms, UnitWriter write) => write.Of(ohms, QuantityKind.Resistance);
}
