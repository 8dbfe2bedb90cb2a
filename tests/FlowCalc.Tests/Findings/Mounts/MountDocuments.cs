using FlowCalc.Findings;
using FlowCalc.Tests.Mounts;

namespace FlowCalc.Tests.Findings.Mounts;

/// <summary>For each finding of a mount a document in which it is found, its severity, and the path of the change that clears it; null where there is none.</summary>
static class MountDocuments
{
    const string Strap = """{ "at": "-80 mm", "width": "20 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "400 N" }""";
    const string Other = """{ "at": "80 mm", "width": "20 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "400 N" }""";
    const string Stops = """[{ "end": "base" }, { "end": "outlet" }]""";

    /// <summary>A mount in which nothing but what it leaves open is found.</summary>
    public static readonly string Sound = MountedLayout.With(
        ("/mount/straps", $"[{Strap}, {Other}]"), ("/mount/endStops", Stops), ("/mount/panel", """{ "thickness": "3 mm", "material": "steel-S235" }"""));

    /// <summary>The documents.</summary>
    public static IEnumerable<(string Code, Severity Severity, string? Path, string Json)> All =>
    [
        (MountCodes.AdapterLever, Severity.Note, null, MountedLayout.With(("/mount/spacers", "\"8 mm\""))),
        (MountCodes.AdapterLever, Severity.Fail, "mount/bolts/size", MountedLayout.With(("/mount/spacers", "\"20 mm\""))),
        (MountCodes.BoltGradeLow, Severity.Warn, "mount/bolts/class", MountedLayout.With(("/mount/bolts/class", "\"5.6\""))),
        (MountCodes.BoltGradeUnknown, Severity.Warn, "mount/bolts/class", MountedLayout.With(("/mount/bolts/class", null))),
        (MountCodes.BoltOverProof, Severity.Fail, "mount/bolts/class", MountedLayout.With(("/mount/bolts/class", "\"4.6\""), ("/mount/centreOfMass/2", "\"400 mm\""))),
        (MountCodes.BoltOverloaded, Severity.Warn, "mount/bolts/class", MountedLayout.With(("/mount/loads/0/acceleration", "160"))),
        (MountCodes.BoltOverloaded, Severity.Fail, "mount/bolts/size", MountedLayout.With(("/mount/bolts/class", "\"12.9\""), ("/mount/loads/0/acceleration", "400"))),
        (MountCodes.BoltsInLine, Severity.Fail, "mount/bolts/at", MountedLayout.With(("/mount/bolts", """{ "size": "M6", "class": "8.8", "at": [["-80 mm", "0 mm"], ["0 mm", "0 mm"], ["80 mm", "0 mm"]] }"""))),
        (MountCodes.BottleOutsideStructure, Severity.Warn, null, MountedLayout.With(("/mount/insideStructure", "false"))),
        (MountCodes.EndStopOverloaded, Severity.Fail, "mount/endStops", MountedLayout.With(("/mount/endStops", """[{ "end": "base", "capacity": "1 kN" }, { "end": "outlet", "capacity": "1 kN" }]"""))),
        (MountCodes.HeadPullsThrough, Severity.Fail, "mount/bolts/washer", MountedLayout.With(("/mount/panel", """{ "thickness": "0.8 mm", "material": "steel-sheet" }"""), ("/mount/loads/0/acceleration", "100"))),
        (MountCodes.HoleBears, Severity.Fail, "mount/bolts/size", MountedLayout.With(("/mount/panel", """{ "thickness": "0.5 mm", "material": "steel-sheet" }"""), ("/mount/bolts/washer", "\"30 mm\""), ("/mount/loads/0/acceleration", "100"))),
        (MountCodes.JointOpens, Severity.Note, null, MountedLayout.With(("/mount/bolts/preload", "\"1 kN\""))),
        (MountCodes.NoEndStop, Severity.Fail, "mount/endStops", MountedLayout.With(("/mount/straps", $"[{Strap}, {Other}]"))),
        (MountCodes.NoEndStop, Severity.Fail, "mount/endStops", MountedLayout.With(("/mount/endStops", "[]"))),
        (MountCodes.NoEndStop, Severity.Warn, "mount/endStops", MountedLayout.With(("/mount/straps", $"[{Strap}, {Other}]"), ("/mount/loads/0/acceleration", "8"))),
        (MountCodes.PlateBends, Severity.Fail, "mount/foot/thickness", MountedLayout.With(("/mount/foot", """{ "thickness": "2 mm", "material": "steel-S235", "width": "30 mm", "toBend": "20 mm", "toEdge": "12 mm" }"""))),
        (MountCodes.PlateBends, Severity.Fail, "mount/panel/spreader", MountedLayout.With(("/mount/panel", """{ "thickness": "1.6 mm", "material": "steel-sheet", "span": "220 mm" }"""), ("/mount/bolts/washer", "\"12 mm\""))),
        (MountCodes.PlateBends, Severity.Fail, "mount/adapter/thickness", MountedLayout.With(("/mount/adapter", """{ "thickness": "3 mm", "material": "aluminium-6082-T6", "bolts": { "size": "M6", "class": "8.8", "rectangle": ["100 mm", "60 mm"] } }"""))),
        (MountCodes.StrapCount, Severity.Warn, "mount/straps", MountedLayout.With(("/mount/straps", $"[{Strap}]"), ("/mount/endStops", Stops))),
        (MountCodes.StrapNotMetal, Severity.Warn, "mount/straps/1/material", MountedLayout.With(("/mount/straps", $$"""[{{Strap}}, { "at": "80 mm", "width": "30 mm", "thickness": "2 mm", "material": "webbing" }]"""), ("/mount/endStops", Stops))),
        (MountCodes.StrapOverloaded, Severity.Fail, "mount/straps/0/thickness", MountedLayout.With(("/mount/straps", $"[{Strap}, {Other}]".Replace("0.8 mm", "0.2 mm", StringComparison.Ordinal)), ("/mount/endStops", Stops))),
        (MountCodes.StrapOverloaded, Severity.Warn, "mount/straps/0/thickness", MountedLayout.With(("/mount/straps", $"[{Strap}, {Other}]".Replace("0.8 mm", "0.3 mm", StringComparison.Ordinal)), ("/mount/endStops", Stops))),
        (MountCodes.ThinPanel, Severity.Warn, "mount/panel/spreader", MountedLayout.With(("/mount/panel", """{ "thickness": "1 mm", "material": "steel-S235" }"""))),
        (MountCodes.ThreadStrips, Severity.Fail, "mount/bolts/thread/engagement", MountedLayout.With(("/mount/bolts/thread", """{ "engagement": "3 mm", "material": "aluminium-6060-T66" }"""), ("/mount/loads/0/acceleration", "60"), ("/mount/centreOfMass/2", "\"160 mm\""))),
        (MountCodes.ThreadTooShort, Severity.Fail, "mount/bolts/thread/engagement", MountedLayout.With(("/mount/bolts/thread", """{ "engagement": "9 mm", "material": "aluminium-6082-T6" }"""))),
        (MountCodes.ThreadTooShort, Severity.Warn, "mount/bolts/thread/engagement", MountedLayout.With(("/mount/bolts/thread", """{ "engagement": "5 mm", "material": "steel-S235" }"""))),
    ];
}
