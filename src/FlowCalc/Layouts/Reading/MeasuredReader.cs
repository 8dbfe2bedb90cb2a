using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Agents;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads what a test of the built system showed.</summary>
static class MeasuredReader
{
    public static readonly Vocabulary Suspects = new("supply-pressure", "roughness", "bore", "nozzles", "run");

    static readonly MeasuredField[] OfHeldTest = [MeasuredField.SupplyPressure, MeasuredField.Time, MeasuredField.Collected, MeasuredField.Flows, MeasuredField.Pressures, MeasuredField.Uncertainty];

    /// <summary>The test; null where it is missing or none.</summary>
    public static Measured? Read(ReadingContext context, JsonValue element, Agent? agent, Supply? supply, Tree? tree)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Measured.TryRead(context, element, out var members)) return null;
        var (before, assumed) = (context.Faults.Count, context.Assumptions.Count);
        TextValue.Read(context, members[MeasuredField.Note], "a note");
        var liquid = Liquid(context, members);
        var temperature = Temperature(context, members, liquid);
        var part = NumberValue.Read(context, members[MeasuredField.Uncertainty], Sizes.Uncertainty);
        var isTimed = members.Has(MeasuredField.DischargeTime);
        var pressure = isTimed ? null : HeldPressure(context, members, supply);
        if (!isTimed && !members.Has(MeasuredField.Collected) && !members.Has(MeasuredField.Flows))
            members.Refuses(context, MeasuredField.Uncertainty, "it is that of flows and of what was collected, and none was read; a pressure states its own");
        var readings = isTimed
            ? TimedReading(context, members, agent, supply)
            : new ReadingList(context, tree, liquid, temperature, double.IsFinite(part) ? part : null).Read(members);
        var suspects = SuspectList(context, members, tree, readings.Length, isTimed);
        var assumptions = context.Assumptions.TakeSince(assumed);
        if (context.Faults.Count > before || liquid is null || tree is null) return null;
        return new Measured
        {
            Agent = liquid,
            Temperature = UnitsNet.Temperature.FromKelvins(temperature),
            SupplyPressure = pressure,
            Readings = readings,
            Suspects = suspects,
            Assumptions = assumptions,
        };
    }

    static LiquidAgent? Liquid(ReadingContext context, in Members<MeasuredField> members)
    {
        if (!members.Has(MeasuredField.Agent))
        {
            context.Assumptions.Add("/measured/agent", "water", "what a system is usually tested with; common practice, no source");
            return AgentCatalogue.Find("water");
        }
        var agent = AgentReader.Read(context, members[MeasuredField.Agent]);
        if (agent is ExpandingAgent) context.Faults.Add(members[MeasuredField.Agent], $"read {Said.Value(members[MeasuredField.Agent])}: no liquid; readings are held against the flow of a liquid, such as water, through the same tubes");
        return agent as LiquidAgent;
    }

    static double Temperature(ReadingContext context, in Members<MeasuredField> members, LiquidAgent? liquid)
    {
        var temperature = TemperatureReader.Usual;
        if (members.Has(MeasuredField.Temperature)) temperature = QuantityValue.Read(context, members[MeasuredField.Temperature], Sizes.Temperature);
        else context.Assumptions.Add("/measured/temperature", "20 °C", "the usual reference temperature");
        if (liquid is null || !double.IsFinite(temperature)) return double.NaN;
        return TemperatureReader.Suits(context, liquid, temperature, members.Owner, "temperature", members[MeasuredField.Temperature]) ? temperature : double.NaN;
    }

    static Pressure? HeldPressure(ReadingContext context, in Members<MeasuredField> members, Supply? supply)
    {
        if (members.Has(MeasuredField.SupplyPressure))
        {
            var read = PressureValue.ReadOverAmbient(context, members[MeasuredField.SupplyPressure], "the pressure of a test");
            return double.IsFinite(read) ? Pressure.FromPascals(read) : null;
        }
        if (supply is HeldSupply held)
        {
            context.Assumptions.Add("/measured/supplyPressure", "the layout's supply", "the supply is held at a pressure");
            return held.Pressure;
        }
        if (supply is not null) members.Requires(context, MeasuredField.SupplyPressure, "the total pressure held at the supply point while readings were taken; a bottle's falls, and only dischargeTime may be read from it");
        return null;
    }

    static ImmutableArray<MeasuredReading> TimedReading(ReadingContext context, in Members<MeasuredField> members, Agent? agent, Supply? supply)
    {
        var element = members[MeasuredField.DischargeTime];
        foreach (var field in OfHeldTest) members.Refuses(context, field, "a test has either dischargeTime, of the whole discharge from the bottle, or readings at a supply that is held at a pressure, with their own uncertainty");
        if (agent is LiquidAgent) context.Assumptions.Add("/measured/dischargeTime", "the volume of the bottle's fill, of the test's liquid", "the bottle is filled as high for the test as for use");
        if (supply is HeldSupply) context.Faults.Add(element, "read a time of a discharge: the supply is no bottle, and has no end");
        if (agent is ExpandingAgent) context.Faults.Add(element, "read a time of a discharge: the agent is no liquid, and its discharge cannot be timed with one");
        if (MeasuredValue.Split(context, element) is not var (value, uncertainty)) return [];
        var time = QuantityValue.Read(context, value, Sizes.ReadDischargeTime);
        var width = MeasuredValue.Width(context, uncertainty, Sizes.ReadDischargeTime, time, MeasuredValue.OfTime, "/measured/dischargeTime/uncertainty");
        return double.IsFinite(time + width) ? [new MeasuredReading(MeasuredKind.DischargeTime, -1, time, width)] : [];
    }

    static ImmutableArray<CauseKind> SuspectList(ReadingContext context, in Members<MeasuredField> members, Tree? tree, int readings, bool isTimed)
    {
        var element = members[MeasuredField.Suspects];
        if (element.ValueKind is JsonValueKind.Undefined) return [];
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() is 0 or > 5)
        {
            context.Faults.Add(element, $"read {Said.Entries(element)}: suspects are one or more of {Suspects.Listed}, each once; all are tried where they are left out");
            return [];
        }
        var kinds = new List<CauseKind>();
        foreach (var entry in element.EnumerateArray())
        {
            var word = TextValue.Choice(context, entry, Suspects);
            if (word < 0) continue;
            var kind = (CauseKind)(word + 1);
            if (kinds.Contains(kind)) context.Faults.Add(entry, $"repeated: {Suspects.Words[word]} is among the suspects already");
            else kinds.Add(kind);
            if (isTimed && kind == CauseKind.Run) context.Faults.Add(entry, "read \"run\": a time alone does not tell one run from another; it finds one unknown of the whole system");
            else if (kind == CauseKind.Nozzles && tree is not null && readings > 0 && NozzleGroup.Of(tree.Points).Length is var groups && groups > readings)
                context.Faults.Add(entry, $"read \"nozzles\": more unknowns than readings, {groups} types of nozzle and {readings}");
        }
        return [.. kinds];
    }
}
