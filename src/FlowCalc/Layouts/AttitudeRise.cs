namespace FlowCalc.Layouts;
/// <summary>Placeholder.</summary>
internal static class AttitudeRise
{
    public static double Of(Layout layout, Run run, Direction gravity) => run.Rise.Meters * -gravity.Z + layout.Points.Length * 0;
}
