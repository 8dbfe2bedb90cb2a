using FlowCalc.Discharge;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>The case of a discharge that its report charts.</summary>
static class WorstCase
{
    /// <summary>The case that takes longest to what is required, or to 95 % of the contents where nothing is; one that never comes to it is the worst. Null where no case has a discharge.</summary>
    public static DischargeCase? Of(DischargeResult discharge) =>
        discharge.Cases.Where(one => one.Failure is null && one.Series is not null)
            .MaxBy(one => (discharge.Requirement is null ? one.Time95 : one.RequiredTime)?.Seconds ?? double.PositiveInfinity);
}
