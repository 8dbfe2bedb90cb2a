namespace FlowCalc.Findings;

/// <summary>Every code that a finding of this version can have; those of mounts stand in <see cref="MountCodes"/>, those of coverages in <see cref="CoverageCodes"/>, those of tests in <see cref="CalibrationCodes"/>.</summary>
public static partial class FindingCodes
{
    /// <summary>A liquefied gas is over its critical temperature.</summary>
    public const string AboveCriticalTemperature = "above-critical-temperature";

    /// <summary>The tubes hold much of the contents.</summary>
    public const string AgentInTube = "agent-in-tube";

    /// <summary>A discharge leaves agent in bottle and tubes.</summary>
    public const string AgentLeftBehind = "agent-left-behind";

    /// <summary>The bottle weighs too little.</summary>
    public const string AgentLost = "agent-lost";

    /// <summary>Values that the document left open were filled in.</summary>
    public const string AssumptionMade = "assumption-made";

    /// <summary>A case is colder than the agent's freezing point.</summary>
    public const string BelowFreezing = "below-freezing";

    /// <summary>The liquid is under so little pressure that it boils.</summary>
    public const string BelowVapourPressure = "below-vapour-pressure";

    /// <summary>A run is given by its length, so that its bends have no place.</summary>
    public const string BendPlacesUnknown = "bend-places-unknown";

    /// <summary>A bend is tighter than its tube allows.</summary>
    public const string BendTooTight = "bend-too-tight";

    /// <summary>Two bends are so close that each changes the other's loss.</summary>
    public const string BendsInteract = "bends-interact";

    /// <summary>The straight between two bends is missing, or too short to grip.</summary>
    public const string BendsOverlap = "bends-overlap";

    /// <summary>An attitude keeps liquid from the dip tube.</summary>
    public const string BottleBlindWhenInverted = "bottle-blind-when-inverted";

    /// <summary>The liquid leaves the bottle's gas little or no room.</summary>
    public const string BottleLiquidFull = "bottle-liquid-full";

    /// <summary>A panel is thicker than its bulkhead union takes.</summary>
    public const string BulkheadGrip = "bulkhead-grip";

    /// <summary>Carbon dioxide would be let go where people can be.</summary>
    public const string CarbonDioxideNearPeople = "carbon-dioxide-near-people";

    /// <summary>The flow in a tube reaches the speed of sound.</summary>
    public const string ChokedRun = "choked-run";

    /// <summary>Clips are farther apart than the tube bears.</summary>
    public const string ClipTooFar = "clip-too-far";

    /// <summary>A discharge is too slow only when it is cold.</summary>
    public const string ColdUnderpowered = "cold-underpowered";

    /// <summary>The contents never come out.</summary>
    public const string ContentsNotDelivered = "contents-not-delivered";

    /// <summary>A date of a rule of the document has passed.</summary>
    public const string DateOverdue = "date-overdue";

    /// <summary>The upright bottle keeps liquid from its dip tube.</summary>
    public const string DipTubeUncoversEarly = "dip-tube-uncovers-early";

    /// <summary>A case of a discharge could not be followed to its end.</summary>
    public const string DischargeNotSolved = "discharge-not-solved";

    /// <summary>The required part comes out too soon.</summary>
    public const string DischargeTooFast = "discharge-too-fast";

    /// <summary>The required part comes out too late, or never.</summary>
    public const string DischargeTooSlow = "discharge-too-slow";

    /// <summary>A date of upkeep is near.</summary>
    public const string DueSoon = "due-soon";

    /// <summary>One fault alone may fire an actuator.</summary>
    public const string FaultFires = "fault-fires";

    /// <summary>A fault keeps an actuator from firing and no lamp shows it.</summary>
    public const string FaultUnseen = "fault-unseen";

    /// <summary>A bottle of a liquefied gas holds more than is usual.</summary>
    public const string FillAboveUsual = "fill-above-usual";

    /// <summary>The first of several actuators to open cuts others off.</summary>
    public const string FiresInSeries = "fires-in-series";

    /// <summary>An actuator may fire where nothing is meant to.</summary>
    public const string FiresUnasked = "fires-unasked";

    /// <summary>A capacitor holds too little energy for an actuator.</summary>
    public const string FiringEnergyLow = "firing-energy-low";

    /// <summary>A capacitor keeps the current up too shortly for an actuator.</summary>
    public const string FiringPulseShort = "firing-pulse-short";

    /// <summary>A fitting has no clip near it.</summary>
    public const string FittingUnsupported = "fitting-unsupported";

    /// <summary>A fitting within a run has no place, so that the tube is not cut there.</summary>
    public const string FittingWithoutPlace = "fitting-without-place";

    /// <summary>A fuse is not sure to hold the firing current.</summary>
    public const string FuseMayOpen = "fuse-may-open";

    /// <summary>The gauge of an inert gas reads too little for its temperature.</summary>
    public const string GasLost = "gas-lost";

    /// <summary>The gas in a bottle becomes so cold that it would condense.</summary>
    public const string GasWouldCondense = "gas-would-condense";

    /// <summary>Green and sound are not the same at a temperature.</summary>
    public const string GaugeMisleads = "gauge-misleads";

    /// <summary>The gauge of a liquefied gas does not show its fill.</summary>
    public const string GaugeNoFill = "gauge-no-fill";

    /// <summary>The gauge was read outside its green.</summary>
    public const string GaugeOffGreen = "gauge-off-green";

    /// <summary>A warm bottle holds more pressure than is marked on it.</summary>
    public const string HotOverpressure = "hot-overpressure";

    /// <summary>A tube without a sleeve gets hotter than its material bears.</summary>
    public const string HotTube = "hot-tube";

    /// <summary>A cut length stands on an insertion that the document does not give.</summary>
    public const string InsertionUnknown = "insertion-unknown";

    /// <summary>A bend begins too near a fitting for its nut.</summary>
    public const string JointStraightShort = "joint-straight-short";

    /// <summary>A date that a rule counts from is not given.</summary>
    public const string LabelMissing = "label-missing";

    /// <summary>A lamp is never seen to be lit.</summary>
    public const string LampDark = "lamp-dark";

    /// <summary>Liquid comes to the last nozzle long after the first.</summary>
    public const string LateArrival = "late-arrival";

    /// <summary>The blow of the liquid may pass the mark of a tube.</summary>
    public const string LineSurge = "line-surge";

    /// <summary>A coil gets too little voltage.</summary>
    public const string LowCoilVoltage = "low-coil-voltage";

    /// <summary>An actuator gets too little current to be sure.</summary>
    public const string LowFiringCurrent = "low-firing-current";

    /// <summary>A run sags below both its ends and holds liquid.</summary>
    public const string LowPoint = "low-point";

    /// <summary>A tube passes something hot without a sleeve.</summary>
    public const string MissingSleeve = "missing-sleeve";

    /// <summary>The bottle has no pressure that drives the agent out.</summary>
    public const string NoDrivingPressure = "no-driving-pressure";

    /// <summary>The no-fire current of an actuator is not given.</summary>
    public const string NoFireUnknown = "no-fire-unknown";

    /// <summary>The source serves other things too.</summary>
    public const string NoOwnSource = "no-own-source";

    /// <summary>A press fires nothing, or nothing fires an actuator.</summary>
    public const string NothingFires = "nothing-fires";

    /// <summary>A nozzle works above its stated pressures.</summary>
    public const string NozzleAboveRange = "nozzle-above-range";

    /// <summary>A nozzle works below its stated pressures.</summary>
    public const string NozzleBelowRange = "nozzle-below-range";

    /// <summary>A case is outside the data of the agent.</summary>
    public const string OutsideAgentData = "outside-agent-data";

    /// <summary>A model is used outside where it was checked.</summary>
    public const string OutsideCheckedRange = "outside-checked-range";

    /// <summary>A loss was worked out where its correlation has no data.</summary>
    public const string OutsideCorrelation = "outside-correlation";

    /// <summary>A part can see more pressure than is marked on it.</summary>
    public const string OverWorkingPressure = "over-working-pressure";

    /// <summary>A nozzle gets more than its share.</summary>
    public const string OverfedNozzle = "overfed-nozzle";

    /// <summary>The fittings of a run leave a piece no length.</summary>
    public const string PieceWithoutLength = "piece-without-length";

    /// <summary>The gauge reads too little for its temperature.</summary>
    public const string PressureLost = "pressure-lost";

    /// <summary>Nozzles are at very different pressures.</summary>
    public const string PressureSpread = "pressure-spread";

    /// <summary>The pressure test is overdue.</summary>
    public const string PressureTestOverdue = "pressure-test-overdue";

    /// <summary>The service is overdue.</summary>
    public const string ServiceOverdue = "service-overdue";

    /// <summary>There is only one way to fire an actuator.</summary>
    public const string SingleTrigger = "single-trigger";

    /// <summary>A nozzle gets less than its share.</summary>
    public const string StarvedNozzle = "starved-nozzle";

    /// <summary>A zone gets less than its share.</summary>
    public const string StarvedZone = "starved-zone";

    /// <summary>A piece is longer than the stock.</summary>
    public const string StockTooShort = "stock-too-short";

    /// <summary>The document states no stock for a tube.</summary>
    public const string StockUnknown = "stock-unknown";

    /// <summary>A straight tube stands between two rigid ends.</summary>
    public const string StraightBetweenRigidEnds = "straight-between-rigid-ends";

    /// <summary>How a tee is made is not said.</summary>
    public const string TeeBodyAssumed = "tee-body-assumed";

    /// <summary>An outlet of a tee that divides liquid and vapour leaves the level.</summary>
    public const string TeeNotLevel = "tee-not-level";

    /// <summary>A tee divides its flow more unevenly than loss data reach.</summary>
    public const string TeeOutsideData = "tee-outside-data";

    /// <summary>A tube does not leave along the axis of the tee's port.</summary>
    public const string TeePortOffAngle = "tee-port-off-angle";

    /// <summary>An actuator can get more current than is safe while it is tested.</summary>
    public const string TestCurrentHigh = "test-current-high";

    /// <summary>The flow in a run is neither laminar nor turbulent.</summary>
    public const string TransitionFlow = "transition-flow";

    /// <summary>A discharge comes to the triple point of its agent.</summary>
    public const string TriplePoint = "triple-point";

    /// <summary>One leg of a tee or junction costs its nozzles their share.</summary>
    public const string UnevenBranch = "uneven-branch";

    /// <summary>The liquid is fast in a run.</summary>
    public const string VelocityHigh = "velocity-high";

    /// <summary>Figures of the agent are estimates.</summary>
    public const string WeakAgentData = "weak-agent-data";

    /// <summary>The source itself takes much of what it gives.</summary>
    public const string WeakSource = "weak-source";

    /// <summary>Wires take much of what the source gives.</summary>
    public const string WireDrop = "wire-drop";

    const string Requirement = "the requirement: the document's, else the application's";
}
