using System.Collections.Immutable;
using System.ComponentModel.DataAnnotations;

namespace FlowCalc.Api.Catalogue;

/// <summary>What an application stands for where a document does not say.</summary>
/// <param name="Id">Its word in documents; <c>general</c> where none is named.</param>
/// <param name="Title">Name for people.</param>
/// <param name="WorksAnyWayUp">Whether the discharge is asked on the roof and on both sides too.</param>
/// <param name="Protection">How its zones are protected.</param>
/// <param name="LeastZones">Zones that need a nozzle at least; null where no rule says.</param>
/// <param name="Note">Why that.</param>
/// <param name="Requirements">What a discharge has to do.</param>
/// <param name="Loads">Load cases of the bottle's mount.</param>
/// <param name="Upkeep">Usual rules of upkeep.</param>
/// <param name="Sources">Keys of the sources.</param>
public sealed record ApplicationAnswer(
    string Id,
    string Title,
    bool WorksAnyWayUp,
    [property: AllowedValues("flooding", "local")] string Protection,
    int? LeastZones,
    string Note,
    ImmutableArray<ApplicationRequirementAnswer> Requirements,
    ImmutableArray<ApplicationLoadAnswer> Loads,
    ImmutableArray<ApplicationRuleAnswer> Upkeep,
    ImmutableArray<string> Sources);
