namespace FlowCalc.Workbench.Pictures;

/// <summary>Something on a <see cref="Picture"/>.</summary>
public abstract record Mark;
