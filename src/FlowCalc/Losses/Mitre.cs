namespace FlowCalc.Losses;

/// <summary>Loss of a sharp turn without radius: a mitred or cross-drilled elbow.</summary>
/// <remarks>
/// K = 0.42 s + 2.56 s³, s = sin(θ/2): 1.20 at 90°, 0.53 at 60°, 0.30 at 45°. Range stated: 0 to 150°.
/// Source: D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 15 (values seen in the open library fluids, form from memory).
/// Threaded elbows of small bore lose more: handbook tables for screwed fittings give 2.1 at 1/2 in and 2.5 at 3/8 in.
/// </remarks>
public static class Mitre
{
    private const double LargestAngle = 150 * Math.PI / 180;

    /// <summary>Loss coefficient of a sharp turn.</summary>
    /// <param name="angle">Angle turned, rad, 0 to 150°.</param>
    /// <returns>K on the velocity head in the elbow's bore, dimensionless; friction not included.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="angle"/> is outside its range, or is NaN.</exception>
    public static double Coefficient(double angle)
    {
        Require.Within(angle, 0, LargestAngle);
        var s = Math.Sin(angle / 2);
        return s * (0.42 + 2.56 * s * s);
    }
}
