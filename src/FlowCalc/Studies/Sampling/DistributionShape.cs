namespace FlowCalc.Studies.Sampling;

/// <summary>How a value is spread.</summary>
public enum DistributionShape
{
    /// <summary>A bell, cut four standard deviations to either side.</summary>
    Normal,

    /// <summary>Every value between the ends alike.</summary>
    Uniform,

    /// <summary>Rising in a straight line from either end to the design value.</summary>
    Triangular,
}
