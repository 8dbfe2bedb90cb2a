namespace FlowCalc.Networks;

/// <summary>The lines of all runs that leave a point, added up: <c>T·m' = G·Ψ' − R</c> for the flow into it.</summary>
internal struct SubtreeSum
{
    /// <summary>Factor of the point's potential.</summary>
    public double G;

    /// <summary>Factor of the flow.</summary>
    public double T;

    /// <summary>The rest.</summary>
    public double R;

    /// <summary>A point that nothing leaves: its flow is 0.</summary>
    public static SubtreeSum Empty => new() { T = 1 };
}
