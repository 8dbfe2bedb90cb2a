using System.Globalization;
using CsCheck;
using FlowCalc.Mounts;
using FlowCalc.Tests.Mounts;

namespace FlowCalc.Tests.Properties.Mounts;

/// <summary>Laws of a whole mount.</summary>
public class MountLawTests
{
    static readonly (string, string?)[] Whole =
    [
        ("/mount/centreOfMass", null), ("/mount/bottleAt", """["10 mm", "-5 mm", "85 mm"]"""), ("/mount/bolts/washer", "\"18 mm\""), ("/mount/spacers", "\"8 mm\""),
        ("/mount/panel", """{ "thickness": "1.5 mm", "material": "steel-sheet", "span": "160 mm" }"""),
        ("/mount/foot", """{ "thickness": "4 mm", "material": "steel-S235", "width": "40 mm", "toBend": "14 mm", "toEdge": "12 mm" }"""),
        ("/mount/straps", """[{ "at": "-80 mm", "width": "20 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "500 N" }, { "at": "90 mm", "width": "20 mm", "thickness": "0.8 mm", "material": "stainless-1.4301", "pretension": "500 N" }]"""),
    ];

    static readonly MountCheckKind[] WithoutPretension = [.. Enum.GetValues<MountCheckKind>().Where(kind => kind != MountCheckKind.StrapTension)];

    [Fact]
    public void Twice_the_acceleration_is_twice_every_use()
    {
        var (one, two) = (MountedLayout.Solve(Whole), MountedLayout.Solve([.. Whole, ("/mount/loads/0/acceleration", "50")]));

        Assert.Equal(one.Checks.Length, two.Checks.Length);
        Assert.Superset(new HashSet<MountCheckKind> { MountCheckKind.BoltStrength, MountCheckKind.BoltBending, MountCheckKind.PullThrough, MountCheckKind.PanelBending, MountCheckKind.FootBending, MountCheckKind.Slip }, one.Checks.Select(check => check.Kind).ToHashSet());
        foreach (var (a, b) in one.Checks.Zip(two.Checks).Where(pair => WithoutPretension.Contains(pair.First.Kind))) Assert.Equal(2 * a.Use, b.Use, tolerance: 1e-9 * b.Use);
    }

    [Fact]
    public void Any_direction_is_no_milder_than_any_one_and_every_load_case_counts() =>
        Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1]).Where(d => new Direction(d.Item1, d.Item2, d.Item3).Length > 0.1).Sample(d =>
        {
            var direction = string.Create(CultureInfo.InvariantCulture, $"[{d.Item1}, {d.Item2}, {d.Item3}]");
            var (any, one) = (MountedLayout.Solve(Whole), MountedLayout.Solve([.. Whole, ("/mount/loads/0/direction", direction)]));
            return any.Checks.Zip(one.Checks).All(pair => pair.Second.Use <= pair.First.Use * (1 + WorstDirection.Tolerance));
        }, iter: 25);

    // Mount, bottle and load turned together: nothing of it knows where up is.
    [Fact]
    public void Turning_the_mount_with_its_bottle_and_its_load_changes_nothing() =>
        Gen.Select(Gen.Double[0, 6.28], Gen.Double[0, 6.28], Gen.Double[0, 6.28]).Sample((a, b, c) =>
        {
            string Turned(Direction d)
            {
                d = new(d.X * Math.Cos(a) - d.Y * Math.Sin(a), d.X * Math.Sin(a) + d.Y * Math.Cos(a), d.Z);
                d = new(d.X, d.Y * Math.Cos(b) - d.Z * Math.Sin(b), d.Y * Math.Sin(b) + d.Z * Math.Cos(b));
                d = new(d.X * Math.Cos(c) + d.Z * Math.Sin(c), d.Y, d.Z * Math.Cos(c) - d.X * Math.Sin(c));
                return string.Create(CultureInfo.InvariantCulture, $"[{d.X}, {d.Y}, {d.Z}]");
            }
            MountResult Of(Func<Direction, string> said) => MountedLayout.Solve(
                [.. Whole, ("/mount/normal", said(new(0, 0, 1))), ("/mount/x", said(new(1, 0, 0))), ("/supply/bottle/axis", said(new(1, 0, 0))), ("/mount/loads/0/direction", said(new(0.3, -0.5, 0.8)))]);

            var (still, turned) = (Of(d => string.Create(CultureInfo.InvariantCulture, $"[{d.X}, {d.Y}, {d.Z}]")), Of(Turned));
            return still.Checks.Zip(turned.Checks).All(pair => Math.Abs(pair.First.Use - pair.Second.Use) <= 1e-9 * Math.Max(1, pair.First.Use));
        }, iter: 25);

    [Fact]
    public void Liquid_at_the_worse_end_is_no_milder_than_the_middle()
    {
        var sloshing = MountedLayout.Solve(("/mount/centreOfMass", null), ("/mount/bottleAt", """["0 mm", "0 mm", "80 mm"]"""));
        var still = MountedLayout.Solve();

        Assert.Equal(2, sloshing.Masses.Centres.Length);
        Assert.Equal(0, sloshing.Masses.Centres.Sum(centre => centre.X.Meters), tolerance: 1e-12);
        // (1 − 3/4.19)/2 of 316 mm, and the agent is 3 of 7.5 kg.
        Assert.Equal((1 - 3.0 / 998.2 / 4.2e-3) / 2 * 0.316 * 3 / 7.5, sloshing.Masses.Centres[1].X.Meters, tolerance: 1e-5);
        Assert.True(sloshing.Governing!.Use > still.Governing!.Use);
    }

    [Fact]
    public void Full_mass_is_the_empty_bottle_its_fill_and_its_cushion()
    {
        var masses = MountedLayout.Solve(("/mount/fullMass", null), ("/supply/bottle/emptyMass", "\"4.4 kg\""), ("/mount/masses", """[{ "name": "bracket", "mass": "1.5 kg", "at": ["0 mm", "0 mm", "0 mm"] }]""")).Masses;

        // 15.01325 bar of nitrogen in what 3 kg of water leave of 4.2 L at 20 °C: p·V·M/(R·T).
        var cushion = 1_501_325 * (4.2e-3 - 3 / 998.2) * 0.0280134 / (8.314462618 * 293.15);
        Assert.Equal(cushion, masses.Cushion.Kilograms, tolerance: 1e-5);
        Assert.Equal(4.4 + 3 + cushion, masses.Bottle.Kilograms, tolerance: 1e-5);
        Assert.Equal(5.9 + 3 + cushion, masses.Total.Kilograms, tolerance: 1e-5);
        Assert.Equal(0.08 * masses.Bottle.Kilograms / masses.Total.Kilograms, Assert.Single(masses.Centres).Z.Meters, tolerance: 1e-9);
    }

    [Fact]
    public void Adapter_is_two_groups_of_which_the_lower_has_the_longer_arm()
    {
        var result = MountedLayout.Solve(("/mount/centreOfMass/2", "\"120 mm\""), ("/mount/adapter", """{ "thickness": "40 mm", "material": "aluminium-6082-T6", "bolts": { "size": "M6", "class": "8.8", "rectangle": ["160 mm", "90 mm"] } }"""));

        var (lower, upper) = (result.Case("any").Bolts.Where(bolt => bolt.Part == MountPart.Structure).Max(bolt => bolt.Pull.Newtons), result.Case("any").Bolts.Where(bolt => bolt.Part == MountPart.Adapter).Max(bolt => bolt.Pull.Newtons));
        Assert.Equal(1044.2575, upper, tolerance: 1e-3);
        Assert.Equal(1838.7469 * Math.Sqrt(1.0 / 16 + Math.Pow(0.12 / 0.32, 2) + Math.Pow(0.12 / 0.18, 2)), lower, tolerance: 1e-3);
        Assert.Contains(result.Checks, check => check.Kind == MountCheckKind.AdapterBending);
    }

    [Fact]
    public void Same_mount_gives_the_same_result_to_the_last_bit() =>
        Assert.Equal(MountedLayout.Solve(Whole).Checks.Select(check => check with { }), MountedLayout.Solve(Whole).Checks.Select(check => check with { }));
}
