namespace FlowCalc.Findings.Cures;

/// <summary>Sizes of the bottle that may be moved step by step.</summary>
static class BottleRemedies
{
    public static Remedy MorePressure(JudgedLayout judged) => Remedy.Ladder("more pressure", ratio => BottleChanges.Pressure(judged, ratio), 1.1, 1.25, 1.5, 2, 3, 5, 8);

    public static Remedy LessPressure(JudgedLayout judged) => Remedy.Ladder("less pressure", ratio => BottleChanges.Pressure(judged, ratio), 0.9, 0.8, 0.65, 0.5, 0.3);

    public static Remedy MoreFill(JudgedLayout judged) => Remedy.Ladder("more fill", ratio => BottleChanges.Fill(judged, ratio), 1.1, 1.25, 1.5, 2);

    public static Remedy LessFill(JudgedLayout judged) => Remedy.Ladder("less fill", ratio => BottleChanges.Fill(judged, ratio), 0.95, 0.9, 0.8, 0.65, 0.5);

    public static Remedy WiderValve(JudgedLayout judged) => Remedy.Ladder("a wider valve", ratio => BottleChanges.Valve(judged, ratio), 1.25, 1.5, 2, 3);

    public static Remedy NarrowerValve(JudgedLayout judged) => Remedy.Ladder("a narrower valve", ratio => BottleChanges.Valve(judged, ratio), 0.8, 0.6, 0.4, 0.25, 0.15);

    public static Remedy Follower(JudgedLayout judged) => Remedy.Each("a dip tube that follows the liquid", BottleChanges.Follower(judged));
}
