using FlowCalc.Circuits;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads actuators.</summary>
static class ActuatorReader
{
    public static readonly Vocabulary Types = new("pyrotechnic", "solenoid");

    // Part of its rated voltage at which a coil still pulls in.
    const double PullIn = 0.85;

    /// <summary>An actuator; null where something is wrong.</summary>
    public static Actuator? Read(ReadingContext context, in Members<CircuitPartField> members, in CircuitPartDraft draft)
    {
        members.Requires(context, CircuitPartField.Type, "one of " + Types.Listed);
        var type = TextValue.Choice(context, members[CircuitPartField.Type], Types);
        var resistance = CircuitPartDraft.Required(context, members);
        var allFire = QuantityValue.Read(context, members[CircuitPartField.AllFire], Sizes.Current);
        var noFire = QuantityValue.Read(context, members[CircuitPartField.NoFire], Sizes.Current);
        var pulse = QuantityValue.Read(context, members[CircuitPartField.Pulse], Sizes.Pulse);
        var energy = QuantityValue.Read(context, members[CircuitPartField.AllFireEnergy], Sizes.FiringEnergy);
        var rated = QuantityValue.Read(context, members[CircuitPartField.RatedVoltage], Sizes.Voltage);
        var isPyrotechnic = type == 0;
        if (isPyrotechnic)
        {
            members.Requires(context, CircuitPartField.AllFire, "the current that is sure to fire it, " + Sizes.Current.Words);
            members.Refuses(context, CircuitPartField.RatedVoltage, "a bridgewire has none; allFire says what fires it");
        }
        else if (type == 1 && !members.Has(CircuitPartField.AllFire) && !members.Has(CircuitPartField.RatedVoltage))
            context.Faults.Add(members.Owner, "read neither allFire nor ratedVoltage: a solenoid has one or both, the current or the voltage that is sure to pull it in");
        if (noFire >= allFire)
            context.Faults.Add(members[CircuitPartField.NoFire], $"read {QuantityValue.Shown(members[CircuitPartField.NoFire])}: what is sure not to fire is under what is sure to, {QuantityValue.Shown(members[CircuitPartField.AllFire])}");
        if (!double.IsFinite(allFire))
        {
            allFire = PullIn * rated / resistance.Ohms;
            if (type == 1 && double.IsFinite(allFire))
            {
                context.Assumptions.Add(draft.Pointer + "/allFire", string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{allFire:0.####} A"), "what passes at 85 % of the rated voltage; common practice, no source");
                if (noFire >= allFire) context.Faults.Add(members[CircuitPartField.NoFire], $"read {QuantityValue.Shown(members[CircuitPartField.NoFire])}: what is sure not to pull it in is under what passes at 85 % of its rated voltage, {allFire:0.####} A");
            }
        }
        if (!(allFire > 0)) return null;
        return new Actuator(draft.Name, draft.From, draft.To, resistance)
        {
            IsPyrotechnic = isPyrotechnic,
            AllFire = ElectricCurrent.FromAmperes(allFire),
            NoFire = double.IsFinite(noFire) ? ElectricCurrent.FromAmperes(noFire) : null,
            Pulse = double.IsFinite(pulse) ? Duration.FromSeconds(pulse) : null,
            AllFireEnergy = double.IsFinite(energy) ? Energy.FromJoules(energy) : null,
            RatedVoltage = double.IsFinite(rated) ? ElectricPotential.FromVolts(rated) : null,
        };
    }
}
