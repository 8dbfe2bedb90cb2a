using System.Collections.Frozen;
using System.Collections.Immutable;
using FlowCalc.Quantities;

namespace FlowCalc.Limits;

/// <summary>The limits that hold where a document states none: one row a finding that has steps to move.</summary>
/// <remarks>
/// Most of these figures come from no rule book; they are common practice without a source, and say so. One that comes from a rule
/// that may not be the user's warns and names the rule; a document that states it may have it fail. Findings whose bound is a property
/// of a part (a marked pressure, a nozzle's range), of the requirement or of the physics have no row here and cannot be moved.
/// </remarks>
public static class DefaultLimits
{
    /// <summary>The source of a limit that the document gives.</summary>
    public const string StatedInTheDocument = "stated in the document";

    /// <summary>The source of a figure of the trade that no document known to us states.</summary>
    public const string CommonPractice = "common practice, no source";

    static readonly FrozenDictionary<string, LimitDefinition> ByCode;
    static readonly ImmutableArray<Limit> OfFlow;
    static readonly ImmutableArray<Limit> OfDischarge;
    static readonly ImmutableArray<Limit> OfCutList;
    static readonly ImmutableArray<Limit> OfMount;
    static readonly ImmutableArray<Limit> OfCircuit;
    static readonly ImmutableArray<Limit> OfUpkeep;
    static readonly ImmutableArray<Limit> OfCoverage;
    static readonly ImmutableArray<Limit> OfCalibration;

    const string OlderEdition = "an older edition seen second-hand; another class may ask for something else";
    const string Joints = "EN 1993-1-8:2005 table 3.4, seen second-hand";
    const string Fixing = "rules of motorsport ask for two metal straps or more, seen second-hand; another class may ask for something else";
    const string Machinery = "IMO MSC/Circ.848, seen second-hand";
    const string WholeContents = $"FIA Formula One technical regulations, article 14.1.4, 95 % of the contents out, {OlderEdition}";
    const string AnyPosition = $"FIA Formula One technical regulations, article 14.1.9, it has to work in any position, {OlderEdition}; the part: {CommonPractice}";

    static DefaultLimits()
    {
        All =
        [
            Ratio("starved-nozzle", warn: 0.10, fail: 0.20, "How far a nozzle's share falls short of the wanted share, as a part of the wanted share.", LimitUse.Both),
            Ratio("overfed-nozzle", warn: 0.10, fail: 0.20, "How far a nozzle's share exceeds the wanted share, as a part of the wanted share.", LimitUse.Both),
            Ratio("starved-zone", warn: 0.05, fail: 0.10, "How far a zone's share falls short of the wanted share, as a part of the wanted share.", LimitUse.Both),
            Ratio("uneven-branch", warn: 0.10, fail: 0.20, "How far the worst nozzle behind one leg of a tee or junction falls short of its wanted share, as a part of it."),
            new("velocity-high", QuantityKind.Speed, Speed(12), Speed(18), null, null, LowerIsWorse: false, CommonPractice, "Mean velocity of a liquid in a run."),
            new("pressure-spread", null, Number(1.3), Number(2), null, null, LowerIsWorse: false, CommonPractice, "Highest over lowest gauge pressure among the nozzles."),
            new("bend-too-tight", null, null, Number(4), Number(3), null, LowerIsWorse: true, CommonPractice,
                "Centre-line radius over outside diameter of the tube, where the tube states no least radius.", LimitUse.Flow | LimitUse.CutList),
            new("bends-overlap", null, null, Number(2), Number(0), null, LowerIsWorse: true, CommonPractice, "Straight tube between two bends over outside diameter of the tube.", LimitUse.Flow | LimitUse.CutList),
            new("bends-interact", null, Number(4), null, null, null, LowerIsWorse: true, "D. S. Miller, Internal Flow Systems, 2nd ed. 1990 (from memory)",
                "Straight tube between two bends over its bore: closer bends change each other's loss by -30 % to +20 %, for which no correction is made."),
            new("tee-port-off-angle", QuantityKind.Angle, null, Degrees(15), null, null, LowerIsWorse: false, CommonPractice,
                "Angle between a tube and the axis of the tee's port that it leaves by."),
            new("bottle-liquid-full", null, null, Number(0.95), Number(1), null, LowerIsWorse: false, "0.95: common practice, no source; 1: physics",
                "Part of the bottle's volume that the liquid fills at the temperature asked for.", LimitUse.Both),
            new("late-arrival", QuantityKind.Time, Seconds(1), Seconds(2), null, null, LowerIsWorse: false, CommonPractice,
                "Time from the first nozzle that liquid reaches to the last.", LimitUse.Discharge),
            new("agent-left-behind", null, Number(0.03), Number(0.05), null, null, LowerIsWorse: false, $"note: {CommonPractice}; warn: {WholeContents}",
                "Agent left in bottle and tubes, as a part of the fill.", LimitUse.Discharge),
            new("agent-in-tube", null, Number(0.10), Number(0.30), null, Number(0.80), LowerIsWorse: false, $"{CommonPractice}; refuse: where approved calculations end (from memory)",
                "Most of the contents that dip tubes and line hold at once, of a gas or an agent that boils, as a part of the fill.", LimitUse.Discharge),
            new("bottle-blind-when-inverted", null, null, Number(0.05), null, null, LowerIsWorse: false, AnyPosition,
                "Liquid that an attitude other than upright keeps from the dip tube, as a part of the fill.", LimitUse.Discharge),
            new("dip-tube-uncovers-early", null, null, Number(0.03), null, null, LowerIsWorse: false, CommonPractice,
                "Liquid that the dip tube leaves behind in the upright bottle, as a part of the fill.", LimitUse.Discharge),
            new("joint-straight-short", null, null, Number(1), Number(0), null, LowerIsWorse: true, CommonPractice,
                "Straight tube left for the nut between a fitting and the next bend, over outside diameter of the tube.", LimitUse.CutList),
            new("straight-between-rigid-ends", QuantityKind.Length, null, Metres(0.3), null, null, LowerIsWorse: false, $"MIL-H-8891A 3.11.4.5, seen second-hand; the length: {CommonPractice}",
                "Length of a run without bend or offset between two fittings.", LimitUse.CutList),
            new("clip-too-far", null, null, Number(1), null, null, LowerIsWorse: false, "MIL-H-8891A table II, seen second-hand, and aircraft handbooks, from memory",
                "Distance between clips over that of the table; over 0.8 of it beside a fitting that the tube carries.", LimitUse.CutList),
            new("fitting-unsupported", QuantityKind.Length, Metres(0.1), null, null, null, LowerIsWorse: false, CommonPractice, "Way along the tube from a fitting to the next clip.", LimitUse.CutList),
            new("low-point", QuantityKind.Length, Metres(0.05), null, null, null, LowerIsWorse: false, CommonPractice, "Depth to which a run sags below the lower of its ends.", LimitUse.CutList),
            Use("bolt-overloaded", 0.7, $"fail: {Joints}; warn: {CommonPractice}", "A bolt's shear and pull, prying with it, over what it bears by EN 1993-1-8, together."),
            Use("bolt-over-proof", null, "ISO 898-1, loads seen second-hand", "A bolt's pull over its proof load; where a spacer bends it, its stress over its proof stress."),
            new("joint-opens", null, Number(1), null, null, null, LowerIsWorse: false, "statics of a tightened joint", "A bolt's pull over the preload that the document states.", LimitUse.Mount),
            Use("head-pulls-through", null, Joints, "A bolt's pull over that at which its head, nut or washer punches through the sheet."),
            Use("hole-bears", null, Joints, "A bolt's shear over that at which the edge of its hole yields."),
            new("thin-panel", QuantityKind.Length, null, Metres(0.002), null, null, LowerIsWorse: true, CommonPractice, "Thickness of a sheet that bolts go through without a spreader of 3 mm or more.", LimitUse.Mount),
            new("thread-too-short", null, null, Number(1), Number(0.8), null, LowerIsWorse: true, CommonPractice,
                "Engagement in a tapped hole over the usual one: the bolt's diameter in steel, twice it in other metals.", LimitUse.Mount),
            Use("thread-strips", null, "half the pitch cylinder at 0.6 of the tensile strength: machine design practice, from memory", "A bolt's pull over that at which the thread of a tapped hole strips."),
            new("adapter-lever", null, Number(1), null, Number(3), null, LowerIsWorse: false, CommonPractice, "Length of the spacers over the diameter of the bolts in them.", LimitUse.Mount),
            Use("plate-bends", 0.7, $"fail: the material's yield; warn: {CommonPractice}", "Bending stress in a bracket's foot, a sheet or an adapter plate over its yield stress."),
            new("strap-count", null, null, Number(2), null, null, LowerIsWorse: true, Fixing, "Straps of the bottle.", LimitUse.Mount),
            Use("strap-overloaded", 0.7, $"fail: the material's yield; warn: {CommonPractice}", "Tension in a strap, pretension with it, over that at which it yields."),
            Use("no-end-stop", 0.7, $"fail: statics; warn: {CommonPractice}", "Force along the bottle's axis towards an end without a stop, over what friction holds."),
            Use("end-stop-overloaded", null, "the document's capacity of the stop", "Force along the bottle's axis over what the stop at that end bears."),
            new("low-firing-current", null, null, Number(2), Number(1.5), null, LowerIsWorse: true, "range-safety practice (from memory)",
                "Least current of an actuator over its all-fire current, with the source at its weakest.", LimitUse.Circuit),
            new("low-coil-voltage", null, null, null, Number(0.85), null, LowerIsWorse: true, CommonPractice,
                "Least voltage of a coil over its rated voltage, with the source at its weakest.", LimitUse.Circuit),
            new("wire-drop", null, Number(0.05), Number(0.10), null, null, LowerIsWorse: false, CommonPractice,
                "Part of what the source gives that is lost in wires while a push fires; in a single loop the part of the voltage.", LimitUse.Circuit),
            new("weak-source", null, Number(0.40), null, null, null, LowerIsWorse: false, CommonPractice,
                "Part of what the source gives that is lost within it while a push fires; in a single loop the part of the resistance.", LimitUse.Circuit),
            new("test-current-high", null, null, null, Number(1), null, LowerIsWorse: false,
                "NASA-STD-8719.24 annex 13.8.1.1.1, seen second-hand: a tenth of the no-fire energy or 50 mA, and no single failure may undo it; a tenth of the no-fire current is stricter",
                "Largest current of an actuator where nothing is meant to fire, any one lamp failed, over the least of a tenth of its no-fire current and 50 mA.", LimitUse.Circuit),
            new("firing-energy-low", null, null, Number(2), Number(1.5), null, LowerIsWorse: true, CommonPractice,
                "Energy that a charged capacitor gives an actuator over its all-fire energy.", LimitUse.Circuit),
            new("firing-pulse-short", null, null, Number(1.5), Number(1), null, LowerIsWorse: true, CommonPractice,
                "Time for which a charged capacitor keeps an actuator at its all-fire current, over the pulse that it needs.", LimitUse.Circuit),
            new("single-trigger", null, null, Number(2), null, null, LowerIsWorse: true, $"FIA Formula One technical regulations, article 14.1.8, {OlderEdition}",
                "Pushes that fire an actuator; judged of competition vehicles, and wherever the document states the limit.", LimitUse.Circuit),
            new("due-soon", null, Number(60), null, null, null, LowerIsWorse: true, CommonPractice, "Days until a date of upkeep is due.", LimitUse.Upkeep),
            new("agent-lost", null, null, null, Number(0.05), null, LowerIsWorse: false, "a city's fire code after NFPA 2001, seen second-hand", "Agent lost by weight, as a part of the fill.", LimitUse.Upkeep),
            new("pressure-lost", null, null, null, Number(0.10), null, LowerIsWorse: false, "a city's fire code after NFPA 2001, seen second-hand",
                "How far the gauge is below what it should read at its temperature, as a part of that; of a liquid or of an agent under nitrogen.", LimitUse.Upkeep),
            new("gas-lost", null, null, null, Number(0.05), null, LowerIsWorse: false, "NFPA 2001 (from memory)",
                "How far the gauge of an inert gas is below what it should read at its temperature, as a part of that.", LimitUse.Upkeep),
            new("aimed-at-person", QuantityKind.Angle, null, null, Degrees(30), null, LowerIsWorse: true, $"not straight at a person: FIA Formula One technical regulations, article 14.1.10, {OlderEdition}, and sense; the angle: {CommonPractice}",
                "Angle between the axis of a spray and the way to a person whom no body hides.", LimitUse.Coverage),
            new("one-nozzle-zone", null, Number(2), null, null, null, LowerIsWorse: true, CommonPractice, "Nozzles of a zone.", LimitUse.Coverage),
            new("too-few-zones", null, null, Number(2), null, null, LowerIsWorse: true, $"FIA Formula One technical regulations, article 14.1.1, cockpit and engine compartment, {OlderEdition}",
                "Zones with a nozzle; judged of competition vehicles, and wherever the document states the limit.", LimitUse.Coverage),
            new("too-little-agent", null, null, null, Number(1), null, LowerIsWorse: true, $"{Machinery}, paragraph 5: the quantity for the coldest temperature",
                "Agent that a flooded zone gets, in the case that gives it least, over what it needs at its coldest.", LimitUse.Coverage),
            new("over-noael", null, null, Number(1), null, null, LowerIsWorse: false, $"{Machinery}, paragraph 6: over it only with warning and escape, at the hottest temperature",
                "Highest concentration of a zone with people over the highest at which no harm was seen (NOAEL).", LimitUse.Coverage),
            new("over-loael", null, null, null, Number(1), null, LowerIsWorse: false, $"{Machinery}, paragraph 6: never over it, at the hottest temperature",
                "Highest concentration of a zone with people over the lowest at which harm was seen (LOAEL).", LimitUse.Coverage),
            new("low-oxygen", null, null, Number(0.12), Number(0.10), null, LowerIsWorse: true, "ISO 14520-1 and NFPA 2001 (from memory): 43 % of an inert gas leave 12 % of oxygen, 52 % leave 10 %",
                "Oxygen that an inert gas leaves in the air of a zone with people at its hottest, as a part of the volume.", LimitUse.Coverage),
            new("flooding-not-claimable", null, null, null, Number(1), null, LowerIsWorse: false, CommonPractice, "Changes of air a minute through a zone that is flooded.", LimitUse.Coverage),
            new("leaving-too-slow", null, null, null, Number(1), null, LowerIsWorse: false, "NFPA 2001 (from memory): 5 min, and 3 min over 43 % of an inert gas",
                "Time that people need to leave a zone over the time that its highest concentration allows them.", LimitUse.Coverage),
            new("likely-kinked-run", null, null, Number(0.05), Number(0.20), null, LowerIsWorse: false, CommonPractice,
                "Part of its flow in the test that a run loses by what is not drawn.", LimitUse.Calibration),
            new("likely-blocked-run", null, null, null, Number(0.95), null, LowerIsWorse: false, CommonPractice,
                "Part of its flow in the test that a run loses by what is not drawn, beyond which it counts as blocked.", LimitUse.Calibration),
            new("built-otherwise", null, Number(0.05), Number(0.10), null, null, LowerIsWorse: false, CommonPractice,
                "Largest change of a reading, as a part of it as drawn, by what all of the system has otherwise than drawn.", LimitUse.Calibration),
            new("readings-disagree", null, null, Number(0.01), null, null, LowerIsWorse: true, $"chi-square test; the step: {CommonPractice}",
                "Chance that readings of such uncertainty scatter as much or more about the likeliest cause.", LimitUse.Calibration),
            new("reading-outlier", null, null, Number(3), null, null, LowerIsWorse: false, $"normal distribution of errors; the step: {CommonPractice}",
                "Distance of a reading from the likeliest cause, in its standard uncertainties.", LimitUse.Calibration),
            new("cause-not-certain", null, Number(2), null, null, null, LowerIsWorse: true, "R. E. Kass and A. E. Raftery (1995), from memory",
                "By how much the score of the next cause is more than that of the likeliest.", LimitUse.Calibration),
        ];
        ByCode = All.ToFrozenDictionary(definition => definition.Code, StringComparer.Ordinal);
        OfFlow = Of(LimitUse.Flow);
        OfDischarge = Of(LimitUse.Discharge);
        OfCutList = Of(LimitUse.CutList);
        OfMount = Of(LimitUse.Mount);
        OfCircuit = Of(LimitUse.Circuit);
        OfUpkeep = Of(LimitUse.Upkeep);
        OfCoverage = Of(LimitUse.Coverage);
        OfCalibration = Of(LimitUse.Calibration);
    }

    /// <summary>All defaults, in the order in which answers list them.</summary>
    public static ImmutableArray<LimitDefinition> All { get; }

    /// <summary>The default of a code.</summary>
    /// <param name="code">A finding's code; case counts.</param>
    /// <returns>The definition, or null where the finding has no steps that a document could state.</returns>
    public static LimitDefinition? Find(string code) => ByCode.GetValueOrDefault(code);

    /// <summary>The limits that hold for an answer to a document.</summary>
    /// <param name="stated">The document's own limits, at most one a code; see <see cref="LimitDefinition.Override"/>.</param>
    /// <param name="use">The answer: a flow, a discharge, a cut list, a mount, a circuit, the upkeep, a coverage or a test.</param>
    /// <returns>One limit a row of <see cref="All"/> of that use, in its order.</returns>
    /// <exception cref="ArgumentException">A stated limit is for a code without a default, a code is stated twice, or the use is not one answer.</exception>
    public static ImmutableArray<Limit> For(ImmutableArray<Limit> stated, LimitUse use)
    {
        if (use is not (LimitUse.Flow or LimitUse.Discharge or LimitUse.CutList or LimitUse.Mount or LimitUse.Circuit or LimitUse.Upkeep or LimitUse.Coverage or LimitUse.Calibration)) throw new ArgumentException("The use of one answer.", nameof(use));
        if (stated.IsDefaultOrEmpty)
            return use switch
            {
                LimitUse.Flow => OfFlow,
                LimitUse.Discharge => OfDischarge,
                LimitUse.Mount => OfMount,
                LimitUse.Circuit => OfCircuit,
                LimitUse.Upkeep => OfUpkeep,
                LimitUse.Coverage => OfCoverage,
                LimitUse.Calibration => OfCalibration,
                _ => OfCutList,
            };

        var byRow = new Limit?[All.Length];
        foreach (var limit in stated)
        {
            var row = RowOf(limit.Code);
            if (row < 0) throw new ArgumentException($"{limit.Code} has no limit that a document could state.", nameof(stated));
            if (byRow[row] is not null) throw new ArgumentException($"{limit.Code} is stated twice.", nameof(stated));
            byRow[row] = All[row].Override(limit);
        }
        var limits = ImmutableArray.CreateBuilder<Limit>(All.Length);
        for (var row = 0; row < byRow.Length; row++)
            if (All[row].Use.HasFlag(use)) limits.Add(byRow[row] ?? All[row].Limit);
        return limits.DrainToImmutable();
    }

    static ImmutableArray<Limit> Of(LimitUse use) => [.. All.Where(definition => definition.Use.HasFlag(use)).Select(definition => definition.Limit)];

    static int RowOf(string code)
    {
        for (var row = 0; row < All.Length; row++)
            if (All[row].Code == code) return row;
        return -1;
    }

    static LimitDefinition Ratio(string code, double warn, double fail, string description, LimitUse use = LimitUse.Flow) =>
        new(code, null, null, Number(warn), Number(fail), null, LowerIsWorse: false, CommonPractice, description, use);

    static LimitDefinition Use(string code, double? warn, string source, string description) =>
        new(code, null, null, warn is { } part ? Number(part) : null, Number(1), null, LowerIsWorse: false, source, description, LimitUse.Mount);

    static Measure Number(double value) => new(value, null);

    static Measure Speed(double metresPerSecond) => new(metresPerSecond, QuantityKind.Speed);

    static Measure Metres(double metres) => new(metres, QuantityKind.Length);

    static Measure Seconds(double seconds) => new(seconds, QuantityKind.Time);

    static Measure Degrees(double degrees) => new(degrees * Math.PI / 180, QuantityKind.Angle);
}
