namespace FlowCalc.Coverage;

/// <summary>An ellipse in a plane.</summary>
/// <param name="SemiMajor">Semi-major axis, m.</param>
/// <param name="SemiMinor">Semi-minor axis, m.</param>
/// <param name="Centre">Its centre, m in the layout's axes.</param>
/// <param name="Major">Direction of the major axis, of length 1.</param>
sealed record SectionEllipse(double SemiMajor, double SemiMinor, Direction Centre, Direction Major)
{
    /// <summary>Its area, m².</summary>
    public double Area => Math.PI * SemiMajor * SemiMinor;
}
