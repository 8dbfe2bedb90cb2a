using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;

namespace FlowCalc.Coverage;

/// <summary>What a zone gets, and what it makes there.</summary>
/// <param name="Zone">The zone.</param>
/// <param name="Protection">How it is protected.</param>
/// <param name="Nozzles">Indices of its nozzles.</param>
/// <param name="Mass">Agent that it gets; null where that is not known.</param>
/// <param name="Air">What the air through it does; null where volume or airflow is not known.</param>
/// <param name="Need">What it takes to flood it; null for what is not flooded, and where too little is known.</param>
/// <param name="Exposure">What its air becomes; null for a liquid agent, and where too little is known.</param>
public sealed record ZoneFill(Zone Zone, Protection Protection, ImmutableArray<int> Nozzles, MassSpan? Mass, ZoneAir? Air, FloodingNeed? Need, ZoneExposure? Exposure);
