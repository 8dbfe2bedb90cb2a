using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Quantities;
using UnitsNet;

namespace FlowCalc.Findings.Cures;

/// <summary>What drives the flow, changed: the pressure, the fill, the valve, the way in of the dip tube.</summary>
static class BottleChanges
{
    const int Digits = 3;

    /// <summary>Another charge pressure, or another pressure of a held supply; null where the agent makes its own, or where it is none that a document may give.</summary>
    /// <param name="judged">The layout.</param>
    /// <param name="ratio">How many times the gauge pressure.</param>
    public static LayoutChange? Pressure(JudgedLayout judged, double ratio)
    {
        var (layout, ambient) = (judged.Layout, judged.Ambient);
        if (layout.Supply is HeldSupply held)
        {
            var size = SizeText.Of((held.Pressure.Pascals - ambient) * ratio, QuantityKind.Pressure, judged.Units, Digits);
            return !IsPressure(size.Si, ambient) ? null : Change(judged, "supply/pressure", held.Pressure.Pascals - ambient, size, QuantityKind.Pressure, "the supply at", new HeldSupply(Absolute(size.Si, ambient)));
        }
        if (layout.Supply is not BottleSupply { Bottle: var bottle } || layout.Agent.Kind == AgentKind.LiquefiedGas) return null;
        var charge = SizeText.Of((bottle.ChargePressure.Pascals - ambient) * ratio, QuantityKind.Pressure, judged.Units, Digits);
        return !IsPressure(charge.Si, ambient) || Refill.Charged(layout.Agent, bottle, charge.Si + ambient) is not { } changed ? null
            : Change(judged, "supply/bottle/chargePressure", bottle.ChargePressure.Pascals - ambient, charge, QuantityKind.Pressure, "the bottle charged to", new BottleSupply(changed));
    }

    /// <summary>Another fill; null for a gas, whose pressure says it, or where it does not fit the bottle.</summary>
    /// <param name="judged">The layout.</param>
    /// <param name="ratio">How many times the fill.</param>
    public static LayoutChange? Fill(JudgedLayout judged, double ratio)
    {
        if (judged.Layout.Supply is not BottleSupply { Bottle: var bottle } || judged.Layout.Agent.Kind == AgentKind.InertGas) return null;
        var fill = SizeText.Of(bottle.Fill.Kilograms * ratio, QuantityKind.Mass, judged.Units, Digits);
        return !Sizes.FillMass.Holds(fill.Si) || Refill.Filled(judged.Layout.Agent, bottle, fill.Si, judged.Ambient) is not { } changed ? null
            : Change(judged, "supply/bottle/fill", bottle.Fill.Kilograms, fill, QuantityKind.Mass, "a fill of", new BottleSupply(changed));
    }

    /// <summary>Another valve; null where none is described.</summary>
    /// <param name="judged">The layout.</param>
    /// <param name="ratio">How many times its flow coefficient.</param>
    public static LayoutChange? Valve(JudgedLayout judged, double ratio)
    {
        if (judged.Layout.Supply is not BottleSupply { Bottle: { Outlet: { ValveKv: { } kv } outlet } bottle }) return null;
        var size = SizeText.Of(kv * ratio, QuantityKind.FlowCoefficient, judged.Units, Digits);
        return !Sizes.Kv.Holds(size.Si) ? null
            : Change(judged, "supply/bottle/outlet/valveKv", kv, size, QuantityKind.FlowCoefficient, "a valve of", new BottleSupply(bottle with { Outlet = outlet with { ValveKv = size.Si } }));
    }

    /// <summary>A pick-up that goes where the liquid is; none where there is one already, or no dip tube.</summary>
    public static IEnumerable<LayoutChange> Follower(JudgedLayout judged)
    {
        if (judged.Layout.Supply is BottleSupply { Bottle: { Outlet: { DipTube: { Follows: false } dip } outlet } bottle })
            yield return new LayoutChange(
                [new CureChange("supply/bottle/outlet/dipTube/follows", ChangeValue.FromFlag(false), ChangeValue.FromFlag(true))], "a dip tube that follows the liquid",
                judged.Layout with { Supply = new BottleSupply(bottle with { Outlet = outlet with { DipTube = dip with { Follows = true } } }) }, 0, 0, null);
    }

    static LayoutChange? Change(JudgedLayout judged, string path, double from, SizeText to, QuantityKind kind, string what, Supply supply)
    {
        if (Math.Abs(to.Si / from - 1) < 1e-9) return null;
        var before = Wording.Of(from, kind, judged.Units);
        return new LayoutChange([new CureChange(path, before, to.Text)], $"{what} {to.Text} instead of {before}", judged.Layout with { Supply = supply }, 0, LayoutChange.StepOf(from, to.Si), null);
    }

    static bool IsPressure(double gauge, double ambient) => gauge > 0 && Sizes.Pressure.Holds(gauge + ambient);

    static Pressure Absolute(double gauge, double ambient) => UnitsNet.Pressure.FromPascals(gauge + ambient);
}
