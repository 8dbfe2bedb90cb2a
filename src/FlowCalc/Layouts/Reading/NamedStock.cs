using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Layouts.Reading;

/// <summary>What points and runs of a document may name.</summary>
/// <param name="Tubes">The document's tubes.</param>
/// <param name="Nozzles">The document's nozzles.</param>
/// <param name="Fittings">The document's fittings.</param>
/// <param name="Zones">The document's zones.</param>
/// <param name="Targets">The targets of its coverage.</param>
sealed record NamedStock(NamedEntries<Tube> Tubes, NamedEntries<NozzleOpening> Nozzles, NamedEntries<Fitting> Fittings, NamedEntries<Zone> Zones, NamedEntries<Target> Targets);
