using System.Collections.Immutable;
using FlowCalc.Limits;

namespace FlowCalc.Findings;

/// <summary>Every code that a finding of this version can have.</summary>
public static class FindingCodes
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

    static readonly ImmutableArray<FindingDefinition> OfLayouts =
    [
        new(AboveCriticalTemperature, "A liquefied gas is over its critical temperature in the bottle, where it has no level.", [Severity.Note], "the agent's data"),
        new(AgentInTube, "Of a gas or an agent that boils, dip tubes and line hold a large part of the contents at once; at the refusing step the method does not hold.", [Severity.Note, Severity.Warn, Severity.Fail], DefaultLimits.Find(AgentInTube)!.Source),
        new(AgentLeftBehind, "After the discharge agent is left in bottle and tubes; fails where the document states such a limit.", [Severity.Note, Severity.Warn], DefaultLimits.Find(AgentLeftBehind)!.Source),
        new(AgentLost, "By weight the bottle has lost a part of its agent.", [Severity.Fail], DefaultLimits.Find(AgentLost)!.Source),
        new(AssumptionMade, "A value that the document leaves open was filled in; always told.", [Severity.Note], "the document"),
        new(BelowFreezing, "A case of the discharge is colder than the freezing point of the agent and has no answer.", [Severity.Fail], "the agent's data"),
        new(BelowVapourPressure, "The absolute total pressure where liquid flows, or around a nozzle that it leaves by, is below its vapour pressure; where that is not known, at or below nothing. Of a discharge: its vapour pressure at a temperature is that of the surroundings or more, and the case has no answer.",
            [Severity.Fail], "the agent's data"),
        new(BendPlacesUnknown, "A run is given by its length: its bends are counted in it, and have no places to mark.", [Severity.Note], "the document"),
        new(BendTooTight, "The radius of a bend is below the least radius of its tube, or, where the tube states none, small against the outside diameter.",
            [Severity.Warn, Severity.Fail], $"the tube's statement; else {DefaultLimits.CommonPractice}"),
        new(BendsInteract, "The straight between two bends is shorter than a few bores.", [Severity.Note], DefaultLimits.Find(BendsInteract)!.Source),
        new(BendsOverlap, "The straight before, between or behind bends is negative, or too short between two bends for a bender to grip.",
            [Severity.Warn, Severity.Fail], $"geometry; {DefaultLimits.CommonPractice}"),
        new(BottleBlindWhenInverted, "An attitude other than upright keeps a part of the liquid, or all of it, from the dip tube; fails where the document itself states the attitudes.",
            [Severity.Warn, Severity.Fail], DefaultLimits.Find(BottleBlindWhenInverted)!.Source),
        new(BottleLiquidFull, "The liquid fills nearly all or all of the bottle at the temperature asked for, or at one of the discharge.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(BottleLiquidFull)!.Source),
        new(BulkheadGrip, "A panel, washers with it, is thicker than its bulkhead union takes.", [Severity.Fail], "the fitting's statement"),
        new(CarbonDioxideNearPeople, "A zone is occupied and the agent is carbon dioxide.", [Severity.Fail], "common rule of every code known to us (from memory)"),
        new(ChokedRun, "Of a gas or an agent that boils, the flow reaches the speed of sound at the end of a run.", [Severity.Note], "physics"),
        new(ClipTooFar, "Clips, or the distance stated for them, are farther apart than the table of the tube's size and material has.", [Severity.Warn], DefaultLimits.Find(ClipTooFar)!.Source),
        new(ColdUnderpowered, "At the coldest temperature with an answer the required part comes later than the requirement allows, or never, and at a warmer one in the same attitude it keeps it; a warning where the rule is the application's.",
            [Severity.Warn, Severity.Fail], Requirement),
        new(ContentsNotDelivered, "95 % of the contents never come out of the nozzles.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(DateOverdue, "The due day of a rule that the document states, other than service and pressure-test, is before the day that is asked for.", [Severity.Fail], "stated in the document"),
        new(DipTubeUncoversEarly, "Upright, the dip tube uncovers while a part of the liquid is left.", [Severity.Warn], DefaultLimits.Find(DipTubeUncoversEarly)!.Source),
        new(DischargeNotSolved, "The computation of a case did not come to an end, and it has no answer.", [Severity.Fail], "the engine"),
        new(DischargeTooFast, "The required part is out sooner than the requirement allows; a warning where the rule is the application's, a note where only what the model leaves open reaches so far.",
            [Severity.Note, Severity.Warn, Severity.Fail], Requirement),
        new(DischargeTooSlow, "The required part is out later than the requirement allows, or never; a warning where the rule is the application's, a note where only what the model leaves open reaches so far.",
            [Severity.Note, Severity.Warn, Severity.Fail], Requirement),
        new(DueSoon, "A date of upkeep falls due within so many days.", [Severity.Note], DefaultLimits.Find(DueSoon)!.Source),
        new(FaultFires, "A single fault of the circuit gives an actuator its no-fire current or more where nothing is meant to fire.", [Severity.Fail], "circuit law"),
        new(FaultUnseen, "A single fault keeps an actuator from its all-fire current, and every lamp is lit or dark as without it.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(FillAboveUsual, "The fill density of a liquefied gas is over what standards usually allow.", [Severity.Warn], AgentFits.UsualFill),
        new(FiresInSeries, "An actuator gets less than its all-fire current once another that is fired with it has opened.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(FiresUnasked, "In a state, or with a press, that is not meant to fire, an actuator gets its no-fire current or more.", [Severity.Fail], "circuit law"),
        new(FiringEnergyLow, "A charged capacitor gives an actuator little more than its all-fire energy, or less.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(FiringEnergyLow)!.Source),
        new(FiringPulseShort, "A charged capacitor keeps an actuator at its all-fire current little longer than the pulse that it needs, or less long.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(FiringPulseShort)!.Source),
        new(FittingUnsupported, "The document gives the places of a run's clips, and a fitting has none of them near it.", [Severity.Note], DefaultLimits.Find(FittingUnsupported)!.Source),
        new(FittingWithoutPlace, "A fitting within a run has no place, or several share one: the tube is not cut there in the list.", [Severity.Warn], "the document"),
        new(FuseMayOpen, "A fuse is not sure to hold the firing current for the pulse; a note where its times or the pulse are not known.", [Severity.Note, Severity.Warn], "ISO 8820-3 (from memory)"),
        new(GasLost, "The gauge of an inert gas is below what it should read at its temperature.", [Severity.Fail], DefaultLimits.Find(GasLost)!.Source),
        new(GasWouldCondense, "Of a gas, what is left in the bottle cools to where it would begin to condense, which is not followed.", [Severity.Note], "the agent's data"),
        new(GaugeMisleads, "At the temperature that is asked for a sound bottle reads outside the green of its gauge, or one that has lost too much reads within it.", [Severity.Note], "physics"),
        new(GaugeNoFill, "The agent is a gas that is liquefied alone: its gauge shows the temperature, and only weighing shows the fill.", [Severity.Note], "physics"),
        new(GaugeOffGreen, "The reading of the gauge lies outside the green of its dial.", [Severity.Warn], "the part's mark"),
        new(HotOverpressure, "Before the valve opens the bottle holds more than its marked working pressure at a temperature of the discharge.", [Severity.Fail], "the part's mark"),
        new(HotTube, "A tube without a sleeve gets hotter than its material, or its skin, bears.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(InsertionUnknown, "A cut length stands on an insertion that the document does not give for that fitting.", [Severity.Note], "the document"),
        new(JointStraightShort, "Between a fitting and the next bend there is too little straight tube for insertion, grip and nut.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(JointStraightShort)!.Source),
        new(LabelMissing, "The document gives no date that a rule of upkeep could count from.", [Severity.Warn], "common practice, no source"),
        new(LampDark, "With the source at its weakest a lamp is lit in no state and with no press that is not meant to fire.", [Severity.Warn], "the document"),
        new(LateArrival, "Liquid comes to one nozzle long after it has come to another.", [Severity.Note, Severity.Warn], DefaultLimits.CommonPractice),
        new(LineSurge, "The bound of the pressure rise when liquid meets a nozzle, on top of the pressure there, is above the marked working pressure of the tube before it.",
            [Severity.Note], "the part's mark; the bound: N. Joukowsky (1898), from memory"),
        new(LowCoilVoltage, "A coil gets less than the part of its rated voltage at which it still pulls in.", [Severity.Fail], DefaultLimits.Find(LowCoilVoltage)!.Source),
        new(LowFiringCurrent, "An actuator gets little more than its all-fire current, or less, with the source at its weakest.", [Severity.Warn, Severity.Fail], DefaultLimits.Find(LowFiringCurrent)!.Source),
        new(LowPoint, "A run sags below both its ends and holds liquid.", [Severity.Note], DefaultLimits.Find(LowPoint)!.Source),
        new(MissingSleeve, "A tube passes something hot without a sleeve.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(NoDrivingPressure, "At a temperature of the discharge the bottle's pressure is not above the surroundings', or below what opens its outlet.", [Severity.Fail], "physics"),
        new(NoFireUnknown, "A pyrotechnic actuator states no no-fire current, so that no test current can be called safe.", [Severity.Fail], "the document"),
        new(NoOwnSource, "The document says of a competition vehicle that the source of the circuit is not its own.", [Severity.Warn], "FIA Formula One technical regulations, article 14.1.8, an older edition seen second-hand; another class may ask for something else"),
        new(NothingFires, "In the armed circuit a push for firing sends no current through any actuator, or no push does through one of them.", [Severity.Fail], "circuit law"),
        new(NozzleAboveRange, "The pressure at a nozzle is, or at any time of a discharge comes, above the range that the document states for it.", [Severity.Warn], NozzlePressures.Statement),
        new(NozzleBelowRange, "The pressure at a nozzle is, or while a bottle gives liquid comes, below the range that the document states for it.", [Severity.Warn], NozzlePressures.Statement),
        new(OutsideAgentData, "A case of the discharge is at a temperature for which there are no data of the agent, and has no answer.", [Severity.Fail], "the agent's data"),
        new(OutsideCheckedRange, "Of an agent under nitrogen, a temperature is outside where the model of dissolved nitrogen was held against published pressures.", [Severity.Note], "the agent's data"),
        new(OutsideCorrelation, "A loss is used outside the range of its data.", [Severity.Note], "the correlation, named in the finding"),
        new(OverWorkingPressure, "With every outlet shut a tube or the bottle sees more than its marked working pressure; a warning where only a failed regulator would let that happen. Of a discharge: a tube, at the highest pressure of all cases.",
            [Severity.Warn, Severity.Fail], "the part's mark"),
        new(OverfedNozzle, "A nozzle's share of the flow, or of what a discharge delivers, exceeds its wanted share; a warning where none is wanted and it takes more than that part of the whole.", [Severity.Warn, Severity.Fail], DefaultLimits.CommonPractice),
        new(PieceWithoutLength, "What its fittings take leaves a piece of tube no length.", [Severity.Fail], "geometry"),
        new(PressureLost, "The gauge is below what it should read at its temperature.", [Severity.Fail], DefaultLimits.Find(PressureLost)!.Source),
        new(PressureSpread, "The highest nozzle pressure is a multiple of the lowest.", [Severity.Note, Severity.Warn], DefaultLimits.CommonPractice),
        new(PressureTestOverdue, "The due day of the pressure test is before the day that is asked for; a warning where the interval is a usual one and not the document's.", [Severity.Warn, Severity.Fail], "the rule: the document's, else a usual one"),
        new(ServiceOverdue, "The due day of the service is before the day that is asked for; a warning where the interval is a usual one and not the document's.", [Severity.Warn, Severity.Fail], "the rule: the document's, else a usual one"),
        new(SingleTrigger, "Fewer pushes than the limit fire an actuator.", [Severity.Warn], DefaultLimits.Find(SingleTrigger)!.Source),
        new(StarvedNozzle, "A nozzle's share of the flow, or of what a discharge delivers, falls short of its wanted share, or the nozzle gets nothing.", [Severity.Warn, Severity.Fail], DefaultLimits.CommonPractice),
        new(StarvedZone, "A zone's share of the flow, or of what a discharge delivers, falls short of its wanted share.", [Severity.Warn, Severity.Fail], DefaultLimits.CommonPractice),
        new(StockTooShort, "A piece, as it is sawn, is longer than any length of its stock.", [Severity.Fail], "the document's stock"),
        new(StockUnknown, "The document states no stock for a tube, so that its pieces are not packed.", [Severity.Note], "the document"),
        new(StraightBetweenRigidEnds, "A run between two fittings has no bend or offset that could give when it grows or shakes.", [Severity.Warn], DefaultLimits.Find(StraightBetweenRigidEnds)!.Source),
        new(TeeBodyAssumed, "A tee's body is not given and counts as smooth; told with how far the answer moves with threaded ones.", [Severity.Note], "the document"),
        new(TeeNotLevel, "Of an agent that boils, an outlet of a tee leaves the level, as far as places are given.", [Severity.Warn], "common practice of makers' design manuals (from memory)"),
        new(TeeOutsideData, "A tee's branch takes under 10 % or over 90 % of the flow; a tee fed through its branch divides more unevenly than 30 to 70 %.",
            [Severity.Warn], DefaultLimits.CommonPractice),
        new(TeePortOffAngle, "A tube leaves a tee at an angle to the axis of its port.", [Severity.Warn], DefaultLimits.CommonPractice),
        new(TestCurrentHigh, "With the source at its strongest and one lamp failed, an actuator can get more than is safe where nothing is meant to fire.", [Severity.Fail], DefaultLimits.Find(TestCurrentHigh)!.Source),
        new(TransitionFlow, "The Reynolds number in a run is between 2000 and 4000.", [Severity.Note], "C. F. Colebrook (1939) above, G. Hagen and J. Poiseuille (1839, 1840) below (all from memory); none between"),
        new(TriplePoint, "The bottle comes to the triple point of carbon dioxide; what is left turns to snow, which is not followed.", [Severity.Warn], "physics"),
        new(UnevenBranch, "Nozzles behind one leg of a tee or junction fall short of their wanted shares; names the leg and the run in it that costs them most.",
            [Severity.Warn, Severity.Fail], DefaultLimits.CommonPractice),
        new(VelocityHigh, "The mean velocity of the liquid in a run is high.", [Severity.Note, Severity.Warn], DefaultLimits.CommonPractice),
        new(WeakAgentData, "How nitrogen dissolves in the agent is an estimate.", [Severity.Note], "own estimate, no measurement was at hand"),
        new(WeakSource, "While a push fires, much of what the source gives is lost within it.", [Severity.Note], DefaultLimits.Find(WeakSource)!.Source),
        new(WireDrop, "While a push fires, much of what the source gives is lost in wires.", [Severity.Note, Severity.Warn], DefaultLimits.Find(WireDrop)!.Source),
    ];

    /// <summary>All codes, in ordinal order, those of mounts among them.</summary>
    public static ImmutableArray<FindingDefinition> All { get; } = [.. OfLayouts.Concat(MountCodes.All).OrderBy(definition => definition.Code, StringComparer.Ordinal)];
}
