using FlowCalc.Agents;
using FlowCalc.Bottles;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a bottle.</summary>
enum BottleField
{
    Volume,
    Fill,
    ChargePressure,
    ChargeTemperature,
    Count,
    CushionGas,
    CushionHeat,
    OpeningTime,
    WorkingPressure,
    EmptyMass,
    Shape,
    Axis,
    Wall,
    Outlet,
    Note,
}

/// <summary>Reads a bottle: of a liquid under a cushion of gas, of a gas, or of a liquefied gas.</summary>
static class BottleReader
{
    public static readonly Vocabulary Gases = new("nitrogen", "argon", "air");
    public static readonly Vocabulary Heats = new("wall", "isothermal", "adiabatic");

    /// <summary>The bottle as a supply; without one where something is missing or wrong.</summary>
    public static SupplyDraft Read(ReadingContext context, JsonValue element, Agent? agent)
    {
        if (!LayoutFields.Bottle.TryRead(context, element, out var members)) return new SupplyDraft(null, double.NaN, default);
        var before = context.Faults.Count;
        BottleFit.Check(context, members, agent);
        var volume = QuantityValue.Read(context, members[BottleField.Volume], Sizes.BottleVolume);
        var charge = PressureValue.ReadOverAmbient(context, members[BottleField.ChargePressure], "a charge pressure");
        var temperature = ChargeTemperature(context, members);
        double mass;
        if (agent is ExpandingAgent expanding) (mass, charge) = ExpandingFill.Read(context, members, expanding, volume, temperature, charge);
        else
        {
            mass = BottleFill.Read(context, members, agent as LiquidAgent, volume, temperature);
            CheckBoiling(context, members, agent as LiquidAgent, charge, temperature);
        }
        var working = PressureValue.Read(context, members[BottleField.WorkingPressure]);
        var empty = QuantityValue.Read(context, members[BottleField.EmptyMass], Sizes.EmptyMass);
        var opening = QuantityValue.Read(context, members[BottleField.OpeningTime], Sizes.OpeningTime);
        var count = NumberValue.Count(context, members[BottleField.Count]);
        var gas = agent is ExpandingAgent ? 0 : Math.Max(0, TextValue.Choice(context, members[BottleField.CushionGas], Gases));
        var heat = Math.Max(0, TextValue.Choice(context, members[BottleField.CushionHeat], Heats));
        var shape = BottleShellReader.Shape(context, members[BottleField.Shape], volume);
        var axis = SpaceValue.Direction(context, members[BottleField.Axis], Sizes.DirectionPart, mayBeZero: false) ?? new Direction(0, 0, 1);
        var wall = BottleShellReader.Wall(context, members[BottleField.Wall]);
        var outlet = OutletReader.Read(context, members[BottleField.Outlet], members.Has(BottleField.Shape) && shape is null ? double.NaN : volume, shape);
        TextValue.Read(context, members[BottleField.Note], "a note");
        BottleFit.Assume(context, members, agent);

        var draft = new SupplyDraft(null, temperature, members[BottleField.ChargeTemperature]);
        // Without an agent the fill's mass may be unknown though nothing is wrong with the bottle.
        if (context.Faults.Count > before || !double.IsFinite(mass)) return draft;
        return draft with
        {
            Supply = new BottleSupply(new Bottle
            {
                Volume = Volume.FromCubicMeters(volume),
                Fill = Mass.FromKilograms(mass),
                ChargePressure = Pressure.FromPascals(charge),
                ChargeTemperature = Temperature.FromKelvins(temperature),
                Count = count,
                CushionGas = (CushionGas)gas,
                CushionHeat = (CushionHeat)heat,
                OpeningTime = Duration.FromSeconds(double.IsFinite(opening) ? opening : 0),
                WorkingPressure = double.IsFinite(working) ? Pressure.FromPascals(working) : null,
                EmptyMass = double.IsFinite(empty) ? Mass.FromKilograms(empty) : null,
                Shape = shape,
                Axis = [axis.X, axis.Y, axis.Z],
                Wall = wall,
                Outlet = outlet,
            }),
        };
    }

    static double ChargeTemperature(ReadingContext context, in Members<BottleField> members) =>
        members.Has(BottleField.ChargeTemperature)
            ? QuantityValue.Read(context, members[BottleField.ChargeTemperature], Sizes.Temperature)
            : TemperatureReader.Usual;

    // A temperature that the agent's data do not reach is reported with the fill.
    static void CheckBoiling(ReadingContext context, in Members<BottleField> members, LiquidAgent? agent, double charge, double temperature)
    {
        if (agent?.Covers(temperature) is not true || !(charge <= agent.VapourPressure(temperature))) return;
        context.Faults.Add(members[BottleField.ChargePressure], $"read {QuantityValue.Shown(members[BottleField.ChargePressure])}: {agent.Title} boils there at the charge temperature, where its vapour alone has {agent.VapourPressure(temperature) / 1e5:0.####} bar absolute; a charge pressure is over that");
    }
}
