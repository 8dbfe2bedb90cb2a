using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Mounts;

/// <summary>One check of a mount.</summary>
/// <param name="Check">What is checked.</param>
/// <param name="Part">Of what, such as <c>bolt 1</c>, <c>strap 2</c> or <c>outlet end</c>.</param>
/// <param name="Use">What is asked over what is borne; 1 is all.</param>
/// <param name="Margin">What is left over what is asked, 1/use − 1; null where nothing is asked.</param>
/// <param name="Load">What is asked; null where several loads act together.</param>
/// <param name="Bears">What it bears; null where several loads act together.</param>
/// <param name="Case">Name of the load case.</param>
/// <param name="Direction">Where the mass is thrown, in the layout's axes, of length 1.</param>
public sealed record MountCheckAnswer(
    [property: AllowedValues(
        "bolt-strength", "bolt-proof", "bolt-bending", "joint-opening", "pull-through", "bearing", "thread-stripping", "foot-bending", "panel-bending", "adapter-bending", "strap-tension", "slip", "end-stop")]
    string Check,
    string Part,
    double Use,
    double? Margin,
    Quantity? Load,
    Quantity? Bears,
    string Case,
    ImmutableArray<double> Direction);
