using FlowCalc.Losses;

namespace FlowCalc.Tests.Published.Losses;

/// <summary>SMACNA duct design fitting table, mitred round elbow; seen in a public reprint. A 2-figure table: 12 %, at least 0.01.</summary>
public class MitreTests
{
    [Theory]
    [InlineData(30, 0.16, TestDisplayName = "Mitre of 30° has the tabulated K 0.16")]
    [InlineData(45, 0.34, TestDisplayName = "Mitre of 45° has the tabulated K 0.34")]
    [InlineData(60, 0.55, TestDisplayName = "Mitre of 60° has the tabulated K 0.55")]
    [InlineData(75, 0.81, TestDisplayName = "Mitre of 75° has the tabulated K 0.81")]
    [InlineData(90, 1.2, TestDisplayName = "Mitre of 90° has the tabulated K 1.2")]
    public void Mitre_has_the_tabulated_coefficient(double degrees, double published) =>
        Assert.Equal(published, Mitre.Coefficient(degrees * Math.PI / 180), tolerance: Math.Max(0.12 * published, 0.01));
}
