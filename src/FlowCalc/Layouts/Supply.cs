namespace FlowCalc.Layouts;

/// <summary>What drives the flow: a <see cref="HeldSupply"/> or a <see cref="BottleSupply"/>.</summary>
public abstract record Supply;
