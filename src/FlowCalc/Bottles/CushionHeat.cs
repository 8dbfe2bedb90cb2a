namespace FlowCalc.Bottles;

/// <summary>How much heat the bottle gives to its cushion while the gas expands.</summary>
public enum CushionHeat
{
    /// <summary>Heat flows from the wall at a finite rate; the default.</summary>
    Wall,

    /// <summary>The cushion keeps its temperature.</summary>
    Isothermal,

    /// <summary>The cushion takes no heat.</summary>
    Adiabatic,
}
