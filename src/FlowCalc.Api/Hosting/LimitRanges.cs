using System.Globalization;
using Microsoft.Extensions.Options;

namespace FlowCalc.Api.Hosting;

/// <summary>Holds the limits of the settings against their ranges, and says of each that is outside what was read and what would be right.</summary>
internal sealed class LimitRanges : IValidateOptions<ServiceLimits>
{
    const long MostHeld = 64L * 1024 * 1024 * 1024;

    static readonly TimeSpan Second = TimeSpan.FromSeconds(1), Hour = TimeSpan.FromHours(1), Day = TimeSpan.FromDays(1);

    /// <inheritdoc/>
    public ValidateOptionsResult Validate(string? name, ServiceLimits options)
    {
        List<string> faults = [];
        Look(options, faults);
        return faults.Count > 0 ? ValidateOptionsResult.Fail(faults) : ValidateOptionsResult.Success;
    }

    static void Look(ServiceLimits limits, List<string> faults)
    {
        Whole(nameof(limits.BodyBytes), limits.BodyBytes, 1024, 1024 * 1024 * 1024);
        if (limits.HeldBytes < limits.BodyBytes || limits.HeldBytes > MostHeld)
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"{ServiceLimits.Section}:{nameof(limits.HeldBytes)} is {limits.HeldBytes}; right is {limits.BodyBytes} ({nameof(limits.BodyBytes)}, so that the largest body fits when it is alone) to {MostHeld}."));
        Time(nameof(limits.BodyTime), limits.BodyTime, Second, Hour);
        Whole(nameof(limits.Points), limits.Points, 2, 1_000_000);
        Time(nameof(limits.FlowTime), limits.FlowTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.DischargePoints), limits.DischargePoints, 2, 10_000);
        Time(nameof(limits.DischargeTime), limits.DischargeTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.Variants), limits.Variants, 1, 1_000);
        Time(nameof(limits.CompareTime), limits.CompareTime, TimeSpan.Zero, Hour);
        Time(nameof(limits.ToleranceTime), limits.ToleranceTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.ToleranceFlowSamples), limits.ToleranceFlowSamples, 100, 1_000_000);
        Whole(nameof(limits.ToleranceDischargeSamples), limits.ToleranceDischargeSamples, 100, 1_000_000);
        Whole(nameof(limits.ToleranceNumbers), limits.ToleranceNumbers, 10_000, 1_000_000_000);
        Whole(nameof(limits.JobsRunning), limits.JobsRunning, 1, 1_000);
        Whole(nameof(limits.JobsWaiting), limits.JobsWaiting, 0, 100_000);
        Whole(nameof(limits.JobsKept), limits.JobsKept, 1, 100_000);
        Whole(nameof(limits.JobBytes), limits.JobBytes, 1024, 1024 * 1024 * 1024);
        Time(nameof(limits.JobKept), limits.JobKept, Second, Day);
        Time(nameof(limits.JobTime), limits.JobTime, TimeSpan.Zero, Day);
        Whole(nameof(limits.SizePoints), limits.SizePoints, 2, 1_000);
        Whole(nameof(limits.SizeStock), limits.SizeStock, 1, 60);
        Whole(nameof(limits.SizeWork), limits.SizeWork, 1, 100_000_000);
        Time(nameof(limits.SizeTime), limits.SizeTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.ExplainedPoints), limits.ExplainedPoints, 2, 10_000);
        Whole(nameof(limits.CutListPoints), limits.CutListPoints, 2, 100_000);
        Whole(nameof(limits.CutListParts), limits.CutListParts, 2, 1_000_000);
        Time(nameof(limits.CutListTime), limits.CutListTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.DrawingPoints), limits.DrawingPoints, 2, 5_000);
        Whole(nameof(limits.DrawingParts), limits.DrawingParts, 2, 100_000);
        Time(nameof(limits.DrawingTime), limits.DrawingTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.ReportPoints), limits.ReportPoints, 2, 1_000);
        Whole(nameof(limits.ReportParts), limits.ReportParts, 2, 100_000);
        Time(nameof(limits.ReportTime), limits.ReportTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.MountPoints), limits.MountPoints, 2, 100_000);
        Time(nameof(limits.MountTime), limits.MountTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.CircuitPoints), limits.CircuitPoints, 2, 100_000);
        Time(nameof(limits.CircuitTime), limits.CircuitTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.UpkeepPoints), limits.UpkeepPoints, 2, 100_000);
        Time(nameof(limits.UpkeepTime), limits.UpkeepTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.CheckPoints), limits.CheckPoints, 2, 10_000);
        Whole(nameof(limits.CheckParts), limits.CheckParts, 2, 100_000);
        Time(nameof(limits.CheckTime), limits.CheckTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.CoveragePoints), limits.CoveragePoints, 2, 10_000);
        Whole(nameof(limits.CoveragePairs), limits.CoveragePairs, 2, 1_000_000);
        Time(nameof(limits.CoverageTime), limits.CoverageTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.CalibrationPoints), limits.CalibrationPoints, 2, 5_000);
        Time(nameof(limits.CalibrationTime), limits.CalibrationTime, TimeSpan.Zero, Hour);
        Whole(nameof(limits.Concurrent), limits.Concurrent, 0, 1_000);
        Whole(nameof(limits.Waiting), limits.Waiting, 0, 100_000);
        Whole(nameof(limits.RequestsPerMinute), limits.RequestsPerMinute, 0, 1_000_000);

        void Whole(string name, long value, long low, long high)
        {
            if (value < low || value > high) faults.Add(string.Create(CultureInfo.InvariantCulture, $"{ServiceLimits.Section}:{name} is {value}; right is {low} to {high}."));
        }

        // No time at all is none to work in.
        void Time(string name, TimeSpan value, TimeSpan low, TimeSpan high)
        {
            if (value == TimeSpan.Zero || value < low || value > high)
                faults.Add($"{ServiceLimits.Section}:{name} is {value:c}; right is {(low == TimeSpan.Zero ? "over 0" : $"{low:c}")} to {high:c}, written as hours:minutes:seconds.");
        }
    }
}
