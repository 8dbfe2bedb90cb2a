namespace FlowCalc.Losses;

/// <summary>State of the flow in a straight round tube, told by its Reynolds number.</summary>
public enum FlowRegime
{
    /// <summary>No flow: Reynolds number 0.</summary>
    AtRest,

    /// <summary>Reynolds number up to 2000: the friction factor is exact.</summary>
    Laminar,

    /// <summary>Reynolds number between 2000 and 4000: intermittent flow whose friction hangs on its history; an error of 30 % or more is usual (common practice, no source).</summary>
    Transition,

    /// <summary>Reynolds number of 4000 or more: the friction factor is that of Colebrook and White.</summary>
    Turbulent,
}
