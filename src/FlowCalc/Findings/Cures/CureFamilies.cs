namespace FlowCalc.Findings.Cures;

/// <summary>Findings that tell one fault from several sides.</summary>
static class CureFamilies
{
    static readonly string[] Shares = [FindingCodes.StarvedNozzle, FindingCodes.OverfedNozzle, FindingCodes.StarvedZone, FindingCodes.UnevenBranch, FindingCodes.PressureSpread];
    static readonly string[] Lateness = [FindingCodes.DischargeTooSlow, FindingCodes.ColdUnderpowered, FindingCodes.ContentsNotDelivered];

    /// <summary>Whether a finding is about the balance between nozzles.</summary>
    public static bool IsOfShares(string code) => Array.IndexOf(Shares, code) >= 0;

    /// <summary>Whether two codes tell one fault.</summary>
    public static bool AreOne(string first, string second) =>
        first == second || (IsOfShares(first) && IsOfShares(second)) || (Array.IndexOf(Lateness, first) >= 0 && Array.IndexOf(Lateness, second) >= 0);
}
