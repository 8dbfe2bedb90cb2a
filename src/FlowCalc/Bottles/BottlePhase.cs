namespace FlowCalc.Bottles;

/// <summary>What a bottle of a gas or a liquefied gas holds.</summary>
public enum BottlePhase
{
    /// <summary>Liquid with gas above it.</summary>
    TwoPhase,

    /// <summary>Liquid alone: its pressure rises by several bar a kelvin.</summary>
    LiquidFull,

    /// <summary>A gas, or a dense fluid above its critical temperature.</summary>
    OnePhase,
}
