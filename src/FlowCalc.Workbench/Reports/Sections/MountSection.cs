using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using FlowCalc.Checks;
using FlowCalc.Mounts;
using FlowCalc.Quantities;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Reports.Blocks;
using UnitsNet;

namespace FlowCalc.Workbench.Reports.Sections;

/// <summary>Whether the bottle stays where it is bolted; none of a document without a mount.</summary>
static class MountSection
{
    const int MostParts = 6;

    public static ReportSection? Of(LayoutCheck check, Shown shown)
    {
        if (check.Mount is not { Result: var mount }) return null;
        var blocks = ImmutableArray.CreateBuilder<ReportBlock>();
        blocks.Add(new ReportParagraph($"On its bolts hang {shown.Of(mount.Masses.Total)}: the full bottle of {shown.Of(mount.Masses.Bottle)}, of it {shown.Of(mount.Masses.Agent)} of agent, and {shown.Of(mount.Masses.Added)} besides.{Governing(mount)}"));
        blocks.Add(ReportTable.Of("Load cases; the force acts at the centre of mass, towards where the mass is thrown", ["case", "#acceleration", "#force", "worst check", "#use"], mount.Cases.Select(one => new[]
        {
            one.Name, $"{Shown.Number(one.Acceleration)} g", Of(one.Force, shown), one.Governing is { } worst ? Name(worst) : Shown.None, Use(one.Governing?.Use),
        })));
        var sources = mount.Cases.GroupBy(one => one.Source).ToArray();
        foreach (var alike in sources)
            blocks.Add(new ReportParagraph($"Source of {(sources.Length == 1 ? "these loads" : string.Join(", ", alike.Select(one => one.Name)))}: {alike.Key}."));
        blocks.Add(ReportTable.Of("Every check in its worst case; at a use of 1 all is used that the part bears", ["parts", "what is checked", "#asked", "#borne", "#use", "#margin", "case"], Checks(mount, shown)));
        if (mount.AxialForce is { } along)
            blocks.Add(new ReportParagraph($"Along its axis the worst case pushes the bottle with {Of(along, shown)}; friction of straps and cradle holds {(mount.Hold is { } hold ? Of(hold, shown) : "nothing that is known")}.{(mount.HoldsWithoutStops ? " Friction alone would hold it." : "")}"));
        if (mount.Thrust is { } thrust) blocks.Add(new ReportParagraph($"A valve that opens before a tube is on it pushes the bottle back with {Of(thrust, shown)}."));
        if (!mount.NotAnswered.IsEmpty) blocks.Add(new ReportParagraph($"Not worked out: {string.Join("; ", mount.NotAnswered)}."));
        return new("Mount of the bottle", blocks.ToImmutable());
    }

    // Parts that are asked the same stand in one row, as four bolts alike do.
    static IEnumerable<string[]> Checks(MountResult mount, Shown shown) => mount.Checks.OrderByDescending(one => one.Use)
        .Select(one => (Part: PartNames.Of(one.Part, one.Number), Row: (string[])
        [
            Words(one.Kind), one.Load is { } load ? Of(load, shown) : Shown.None, one.Bears is { } bears ? Of(bears, shown) : Shown.None, Use(one.Use),
            one.Margin is { } margin ? margin.ToString("0.00", CultureInfo.InvariantCulture).Replace('-', '−') : Shown.None, mount.Cases[one.Case].Name,
        ]))
        .GroupBy(one => string.Join('\n', one.Row))
        .Select(alike => (string[])[ReportTable.Few([.. alike.Select(one => one.Part)], MostParts), .. alike.First().Row]);

    static string Governing(MountResult mount) =>
        mount.Governing is { } worst ? $" Nearest to what it bears is {PartNames.Of(worst.Part, worst.Number)} ({Words(worst.Kind)}) at a use of {Use(worst.Use)} in the case {mount.Cases[worst.Case].Name}." : " Nothing of it could be checked.";

    static string Name(CheckResult check) => $"{PartNames.Of(check.Part, check.Number)}, {Words(check.Kind)}";

    static string Words(MountCheckKind kind) => JsonNamingPolicy.KebabCaseLower.ConvertName(kind.ToString()).Replace('-', ' ');

    static string Use(double? use) => use is { } known ? known.ToString("0.00", CultureInfo.InvariantCulture) : Shown.None;

    static string Of(Force force, Shown shown) => shown.Of(force.Newtons, QuantityKind.Force);
}
