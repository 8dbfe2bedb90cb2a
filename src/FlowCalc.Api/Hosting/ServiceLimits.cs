namespace FlowCalc.Api.Hosting;

/// <summary>What one request may ask of the service; the section <c>Limits</c> of the settings.</summary>
public sealed class ServiceLimits
{
    /// <summary>Name of the section.</summary>
    public const string Section = "Limits";

    /// <summary>Largest body in bytes, 1 KiB to 1 GiB. A document of 100 000 points has about 30 MB.</summary>
    public int BodyBytes { get; init; } = 48 * 1024 * 1024;

    /// <summary>Longest time for a body to arrive, 1 s to 1 h; beyond it the request is answered 408. After five seconds a sender that gives less than 10 kB a second is cut off before that.</summary>
    public TimeSpan BodyTime { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>Most bytes of bodies that arrive or wait and of answers that are sent, of all callers together, <see cref="BodyBytes"/> to 64 GiB; a request beyond it is answered 429. Work that is done is sent all the same, and nothing new is taken in until there is room.</summary>
    public long HeldBytes { get; init; } = 256L * 1024 * 1024;

    /// <summary>Most points of a layout on <c>/v1/flow</c>, 2 to 1 000 000.</summary>
    public int Points { get; init; } = 100_000;

    /// <summary>Longest time for the answer to <c>/v1/flow</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan FlowTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most points of a layout on <c>/v1/discharge</c>, 2 to 10 000.</summary>
    public int DischargePoints { get; init; } = 500;

    /// <summary>Longest time for the answer to <c>/v1/discharge</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan DischargeTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most variants on <c>/v1/compare</c> beside the base, 1 to 1 000.</summary>
    public int Variants { get; init; } = 20;

    /// <summary>Longest time for the answer to <c>/v1/compare</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan CompareTime { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>Longest time for the answer to <c>/v1/tolerance</c> to a caller that waits, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan ToleranceTime { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>Most samples of a steady flow on <c>/v1/tolerance</c>, 100 to 1 000 000.</summary>
    public int ToleranceFlowSamples { get; init; } = 100_000;

    /// <summary>Most samples of a discharge on <c>/v1/tolerance</c>, 100 to 1 000 000.</summary>
    public int ToleranceDischargeSamples { get; init; } = 20_000;

    /// <summary>Most figures of all samples together on <c>/v1/tolerance</c>, 10 000 to 1 000 000 000; one takes eight bytes while a study runs.</summary>
    public int ToleranceNumbers { get; init; } = 10_000_000;

    /// <summary>Jobs that run at once, 1 to 1 000.</summary>
    public int JobsRunning { get; init; } = 2;

    /// <summary>Jobs that wait, 0 to 100 000; one more is answered 429.</summary>
    public int JobsWaiting { get; init; } = 16;

    /// <summary>Jobs that have ended and are kept, 1 to 100 000; beyond, the one that ended first is forgotten.</summary>
    public int JobsKept { get; init; } = 64;

    /// <summary>Bytes of answers that are kept in all, 1 KiB to 1 GiB; beyond, the one that ended first is forgotten, the last never.</summary>
    public int JobBytes { get; init; } = 64 * 1024 * 1024;

    /// <summary>How long a job that has ended is kept, 1 s to 24 h.</summary>
    public TimeSpan JobKept { get; init; } = TimeSpan.FromMinutes(15);

    /// <summary>Longest time that a job may run, over 0 to 24 h.</summary>
    public TimeSpan JobTime { get; init; } = TimeSpan.FromMinutes(10);
    /// <summary>Most points of a layout on <c>/v1/size</c>, 2 to 1 000.</summary>
    public int SizePoints { get; init; } = 200;

    /// <summary>Most tubes, and most orifices, K-factors and nozzles together, of a stock on <c>/v1/size</c>, 1 to 60.</summary>
    public int SizeStock { get; init; } = 24;

    /// <summary>Work after which the search of <c>/v1/size</c> ends with what it has, in solves of one steady flow of a liquid, 1 to 100 000 000.</summary>
    public int SizeWork { get; init; } = 150_000;

    /// <summary>Longest time for the answer to <c>/v1/size</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan SizeTime { get; init; } = TimeSpan.FromSeconds(30);

    /// <summary>Most points that <c>explain=true</c> explains, 2 to 10 000; on <c>/v1/discharge</c> and a study of a discharge points of the layout times cases, on <c>/v1/compare</c> those of all layouts, on <c>/v1/cut-list</c> runs, bends, fittings, clips and hot places instead. An explanation has about 10 kB a point.</summary>
    public int ExplainedPoints { get; init; } = 500;
    /// <summary>Most points of a layout on <c>/v1/cut-list</c>, 2 to 100 000.</summary>
    public int CutListPoints { get; init; } = 10_000;

    /// <summary>Most runs, bends, fittings, clips and hot places together on <c>/v1/cut-list</c>, 2 to 1 000 000.</summary>
    public int CutListParts { get; init; } = 50_000;

    /// <summary>Longest time for the answer to <c>/v1/cut-list</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan CutListTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most points of a layout on <c>/v1/drawing</c>, 2 to 5 000.</summary>
    public int DrawingPoints { get; init; } = 500;

    /// <summary>Most runs, corners and fittings together on <c>/v1/drawing</c>, 2 to 100 000.</summary>
    public int DrawingParts { get; init; } = 5_000;

    /// <summary>Longest time for the answer to <c>/v1/drawing</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan DrawingTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most points of a layout on <c>/v1/report</c>, 2 to 1 000.</summary>
    public int ReportPoints { get; init; } = 200;

    /// <summary>Most runs, bends, fittings, clips, hot places and zones together on <c>/v1/report</c>, 2 to 100 000.</summary>
    public int ReportParts { get; init; } = 2_000;

    /// <summary>Longest time for the answer to <c>/v1/report</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan ReportTime { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>Most points of a layout on <c>/v1/mount</c>, 2 to 100 000.</summary>
    public int MountPoints { get; init; } = 10_000;

    /// <summary>Longest time for the answer to <c>/v1/mount</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan MountTime { get; init; } = TimeSpan.FromSeconds(4);
    /// <summary>Most points of a layout on <c>/v1/circuit</c>, 2 to 100 000.</summary>
    public int CircuitPoints { get; init; } = 10_000;

    /// <summary>Longest time for the answer to <c>/v1/circuit</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan CircuitTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most points of a layout on <c>/v1/upkeep</c>, 2 to 100 000.</summary>
    public int UpkeepPoints { get; init; } = 10_000;

    /// <summary>Longest time for the answer to <c>/v1/upkeep</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan UpkeepTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most points of a layout on <c>/v1/check</c>, 2 to 10 000.</summary>
    public int CheckPoints { get; init; } = 200;

    /// <summary>Most runs, bends, fittings, clips and hot places together on <c>/v1/check</c>, 2 to 100 000.</summary>
    public int CheckParts { get; init; } = 5_000;

    /// <summary>Longest time for the answer to <c>/v1/check</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan CheckTime { get; init; } = TimeSpan.FromSeconds(20);

    /// <summary>Most points of a layout on <c>/v1/coverage</c>, 2 to 10 000.</summary>
    public int CoveragePoints { get; init; } = 500;

    /// <summary>Most surfaces, targets and persons together, times nozzles, on <c>/v1/coverage</c>, 2 to 1 000 000.</summary>
    public int CoveragePairs { get; init; } = 10_000;

    /// <summary>Longest time for the answer to <c>/v1/coverage</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan CoverageTime { get; init; } = TimeSpan.FromSeconds(8);

    /// <summary>Most points of a layout on <c>/v1/calibrate</c>, which tries every run, 2 to 5 000.</summary>
    public int CalibrationPoints { get; init; } = 500;

    /// <summary>Longest time for the answer to <c>/v1/calibrate</c>, over 0 to 1 h, counted from when its work begins.</summary>
    public TimeSpan CalibrationTime { get; init; } = TimeSpan.FromSeconds(4);

    /// <summary>Most requests worked on at once, 0 to 1 000; 0 means two a processor.</summary>
    public int Concurrent { get; init; }

    /// <summary>Most requests that wait for their turn, 0 to 100 000; one more is answered 429. A waiting request holds its body, which counts among <see cref="HeldBytes"/>.</summary>
    public int Waiting { get; init; } = 256;

    /// <summary>Most requests a minute from one address, 0 to 1 000 000; 0 means any number.</summary>
    public int RequestsPerMinute { get; init; } = 1_200;

    /// <summary>True to count requests from this machine too; a proxy on the same machine makes every request one of those.</summary>
    public bool CountLoopback { get; init; }

    /// <summary>The requests worked on at once, with the default resolved.</summary>
    public int Workers => Concurrent > 0 ? Concurrent : 2 * Environment.ProcessorCount;
}
