using FlowCalc.Agents;

namespace FlowCalc.Layouts.Reading;

/// <summary>Which members of a bottle an agent needs and which do not fit it.</summary>
static class BottleFit
{
    /// <summary>Faults for what is missing and for what does not fit; without an agent a bottle of liquid is expected.</summary>
    public static void Check(ReadingContext context, in Members<BottleField> members, Agent? agent)
    {
        var kind = agent?.Kind ?? AgentKind.Liquid;
        members.Requires(context, BottleField.Volume, Sizes.BottleVolume);
        if (kind == AgentKind.InertGas)
            members.Refuses(context, BottleField.Fill, $"a bottle of {agent!.Title} holds what its volume, charge pressure and charge temperature say; leave the fill out");
        else
            members.Requires(context, BottleField.Fill, "the agent in the bottle, as a mass, a volume or a fill density");
        if (kind == AgentKind.LiquefiedGas)
            members.Refuses(context, BottleField.ChargePressure, $"{agent!.Title} drives itself out: its pressure follows from fill and temperature; leave the charge pressure out");
        else
            members.Requires(context, BottleField.ChargePressure, kind == AgentKind.InertGas ? "the pressure to which the bottle was charged, over the ambient pressure" : "the pressure of the cushion, over the ambient pressure");
        switch (kind)
        {
            case AgentKind.InertGas or AgentKind.LiquefiedGas:
                members.Refuses(context, BottleField.CushionGas, $"{agent!.Title} has no cushion of another gas; leave it out");
                break;
            case AgentKind.LiquefiedUnderNitrogen when members.Has(BottleField.CushionGas) && TextValue.Choice(context, members[BottleField.CushionGas], BottleReader.Gases) > 0:
                context.Faults.Add(members[BottleField.CushionGas], $"read {Said.Value(members[BottleField.CushionGas])}: only nitrogen is answered over {agent!.Title}, as there are no data of other gases dissolved in it; \"nitrogen\", or leave it out");
                break;
        }
    }

    /// <summary>What was taken where the document says nothing.</summary>
    public static void Assume(ReadingContext context, in Members<BottleField> members, Agent? agent)
    {
        var kind = agent?.Kind ?? AgentKind.Liquid;
        if (!members.Has(BottleField.ChargeTemperature) && kind != AgentKind.LiquefiedGas) context.Assumptions.Add("/supply/bottle/chargeTemperature", "20 °C", "the usual reference temperature");
        if (!members.Has(BottleField.CushionGas) && kind == AgentKind.Liquid) context.Assumptions.Add("/supply/bottle/cushionGas", "nitrogen", "the usual cushion");
        if (!members.Has(BottleField.Outlet))
            context.Assumptions.Add("/supply/bottle/outlet", kind == AgentKind.InertGas ? "no loss in valve and outlet" : "no loss in dip tube and valve, and all liquid is drawn", "the document describes no outlet");
    }
}
