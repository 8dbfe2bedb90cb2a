using ArchUnitNET.Domain;
using ArchUnitNET.Fluent.Syntax.Elements.Types;
using ArchUnitNET.Loader;
using ArchUnitNET.xUnitV3;
using FlowCalc.Networks;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace FlowCalc.Tests.Architecture;

/// <summary>The arrows between the folders of the library, which the compiler does not keep.</summary>
public class ArrowTests
{
    static readonly ArchUnitNET.Domain.Architecture Library = new ArchLoader().LoadAssembly(typeof(Network).Assembly).Build();

    /// <summary>A folder, and the folders of which it knows nothing.</summary>
    public static TheoryData<string, string[]> Arrows => new()
    {
        { "Quantities", ["Agents", "Losses", "Networks", "Bottles", "Stock", "Limits", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Agents", ["Losses", "Networks", "Bottles", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "ReferenceData", ["Quantities", "Agents", "Losses", "Networks", "Bottles", "Stock", "Examples", "Limits", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Stock", ["Agents", "Losses", "Networks", "Bottles", "Limits", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Examples", ["Agents", "Losses", "Networks", "Bottles", "Limits", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Losses", ["Quantities", "ReferenceData", "Stock", "Limits", "Agents", "Networks", "Bottles", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Networks", ["Quantities", "ReferenceData", "Stock", "Limits", "Agents", "Bottles", "Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Bottles", ["Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Upkeep", "Coverage"] },
        { "Limits", ["Layouts", "Flows", "Discharge", "Explanations", "Findings", "Mounts", "Upkeep", "Coverage"] },
        { "Layouts", ["Flows", "Discharge", "Explanations", "Routes", "Findings", "Mounts", "Upkeep", "Coverage", "Calibration"] },
        { "Flows", ["Discharge", "Explanations", "Routes", "Findings", "Mounts", "Circuits", "Upkeep", "Coverage", "Calibration"] },
        { "Discharge", ["Explanations", "Routes", "Findings", "Studies", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Routes", ["Agents", "Networks", "Bottles", "Flows", "Discharge", "Explanations", "Findings", "Studies", "Mounts", "Circuits", "Upkeep", "Coverage"] },
        { "Circuits", ["Quantities", "Agents", "Losses", "Networks", "Bottles", "Limits", "Layouts", "Flows", "Discharge", "Explanations", "Routes", "Findings", "Studies", "Mounts", "Upkeep", "Coverage"] },
        { "Upkeep", ["Networks", "Flows", "Discharge", "Explanations", "Routes", "Findings", "Studies", "Mounts", "Circuits", "Coverage"] },
        { "Coverage", ["Explanations", "Routes", "Findings", "Studies", "Mounts", "Circuits", "Upkeep"] },
        { "Mounts", ["Losses", "Networks", "Flows", "Discharge", "Explanations", "Routes", "Findings", "Studies", "Coverage"] },
        { "Findings", ["Studies", "Explanations", "Checks"] },
        { "Studies", ["Explanations", "Checks"] },
        { "Explanations", ["Checks"] },
        { "Checks", ["Studies", "Explanations"] },
        { "Exchange", ["Discharge", "Findings", "Studies", "Explanations", "Routes", "Mounts", "Circuits", "Upkeep", "Coverage", "Calibration", "Checks"] },
        { "Calibration", ["Explanations", "Routes", "Findings", "Studies", "Mounts", "Circuits", "Upkeep"] },
    };

    [Theory]
    [MemberData(nameof(Arrows))]
    public void A_folder_knows_nothing_of_the_folders_that_use_it(string folder, string[] users)
    {
        foreach (var user in users)
            Types().That().Are(In(folder)).Should().NotDependOnAny(In(user)).Check(Library);
    }

    // Words of several folders, such as a direction, stand above all of them and so may not look into one.
    [Fact]
    public void What_stands_above_the_folders_knows_nothing_of_them()
    {
        var above = Library.Types.Where(type => type.Namespace?.FullName == "FlowCalc").ToArray();

        Assert.Contains(above, type => type.Name == nameof(Direction));
        Assert.All(above, type => Assert.DoesNotContain(type.Dependencies, use => FolderOf(use.Target) is not null));
    }

    // A rule over a folder that was renamed or emptied holds whatever the code does.
    [Fact]
    public void Every_folder_named_by_an_arrow_holds_types()
    {
        var folders = Arrows.SelectMany(row => row.Data.Item2.Append(row.Data.Item1)).Distinct();

        Assert.All(folders, folder => Assert.NotEmpty(In(folder).GetObjects(Library)));
    }

    [Fact]
    public void An_arrow_that_the_code_breaks_is_seen()
    {
        var broken = Types().That().Are(In("Networks")).Should().NotDependOnAny(In("Losses"));

        Assert.False(broken.HasNoViolations(Library));
    }

    [Fact]
    public void Folders_do_not_depend_on_each_other_in_a_circle()
    {
        var uses = Library.Types.Where(type => FolderOf(type) is not null).ToLookup(type => FolderOf(type)!)
            .ToDictionary(types => types.Key, types => types.SelectMany(type => type.Dependencies).Select(use => FolderOf(use.Target)).OfType<string>().ToHashSet());

        // What uses nothing that is left cannot stand in a circle.
        while (uses.FirstOrDefault(folder => folder.Value.All(used => used == folder.Key || !uses.ContainsKey(used))).Key is { } free)
            uses.Remove(free);

        Assert.Empty(uses.Keys);
    }

    // FlowCalc.Layouts.Reading is part of Layouts: the folders within one may know each other.
    // A generic parameter is a type without a namespace.
    static string? FolderOf(IType type) => type.Namespace?.FullName.Split('.') is ["FlowCalc", var folder, ..] ? folder : null;

    static GivenTypesConjunction In(string folder) => Types().That().ResideInNamespaceMatching($@"^FlowCalc\.{folder}(\.|$)");
}
