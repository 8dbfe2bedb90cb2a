using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Coverage;
using UnitsNet;

namespace FlowCalc.Coverage;

/// <summary>What every zone gets, and what it makes there.</summary>
static class ZoneFills
{
    const double Bar = 1e5, Standard = 101_325;

    public static ImmutableArray<ZoneFill> Of(Layout layout, DischargeResult? discharge, ZoneMasses masses, CoverageNotes notes, CancellationToken cancellationToken)
    {
        var byZone = layout.Points.Select((point, at) => (point, at)).Where(one => one.point is Nozzle { Zone: not null }).ToLookup(one => ((Nozzle)one.point).Zone!, one => one.at);
        var agent = FloodingAgent.Of(layout.Agent);
        var fills = ImmutableArray.CreateBuilder<ZoneFill>(layout.Zones.Length);
        foreach (var zone in layout.Zones)
        {
            cancellationToken.ThrowIfCancellationRequested();
            ImmutableArray<int> nozzles = [.. byZone[zone.Id]];
            var protection = ProtectionOf(layout, zone, agent, notes);
            var mass = masses.Of(nozzles);
            if (mass is null)
                notes.NotAnswer(discharge is null ? $"what zone {zone.Id} gets: a bottle with a discharge is needed, or a requirement with a quantity" : $"what zone {zone.Id} gets: no case of the discharge has an answer");
            var space = agent is null ? null : SpaceOf(layout, zone, discharge, agent, protection, notes);
            var need = space is null || protection == Protection.Local ? null : Need(layout, zone, agent!, space, notes);
            var exposure = space is null || mass is null ? null : Exposure(layout, agent!, space, mass);
            fills.Add(new(zone, protection, nozzles, mass, Air(layout, zone, agent, masses, nozzles, space, need, exposure), need, exposure));
        }
        return fills.DrainToImmutable();
    }

    static Protection ProtectionOf(Layout layout, Zone zone, FloodingAgent? agent, CoverageNotes notes)
    {
        if (zone.Protection is { } stated) return stated;
        var row = ApplicationDefaults.Of(layout.Application);
        var protection = agent is null ? Protection.Local : row.Protection;
        notes.Assume(zone.Id, "protection", protection == Protection.Flooding ? "flooding" : "local",
            agent is null ? "a liquid wets and cools, and makes no concentration" : $"{row.Note.TrimEnd('.')}: {row.Source}");
        return protection;
    }

    static Space? SpaceOf(Layout layout, Zone zone, DischargeResult? discharge, FloodingAgent agent, Protection protection, CoverageNotes notes)
    {
        if (zone.Volume is not { } volume)
        {
            if (protection == Protection.Flooding || zone.Occupied) notes.NotAnswer($"the concentration in zone {zone.Id}: its volume is needed");
            return null;
        }
        var (coldest, hottest) = (zone.Coldest, zone.Hottest);
        if (coldest is null || hottest is null)
        {
            double[] cases = discharge is { Cases.IsEmpty: false } ? [.. discharge.Cases.Select(one => one.Temperature.Kelvins)] : [layout.Temperature.Kelvins];
            (coldest, hottest) = (Temperature.FromKelvins(cases.Min()), Temperature.FromKelvins(cases.Max()));
            notes.Assume(zone.Id, "temperatures", $"{Celsius(coldest.Value)} to {Celsius(hottest.Value)}", "the temperatures of the bottle, taken for those of the space");
        }
        // Air that is let go adds to what the agent has to mix with; at the pressure of the space.
        var free = zone.AirBottle is { } air ? air.Volume.CubicMeters * (air.Pressure.Pascals - layout.AmbientPressure.Pascals) / layout.AmbientPressure.Pascals : 0;
        return new(volume.CubicMeters, volume.CubicMeters + free, coldest.Value, hottest.Value);
    }

    static FloodingNeed? Need(Layout layout, Zone zone, FloodingAgent agent, Space space, CoverageNotes notes)
    {
        var hazard = zone.Hazard;
        if (zone.Design is null && hazard is null)
        {
            hazard = Hazard.ClassB;
            notes.Assume(zone.Id, "hazard", "class-B", "liquid fuel, which needs most of what the table has");
        }
        if ((zone.Design ?? agent.DesignFor(hazard!.Value)) is not { } design)
        {
            notes.NotAnswer($"the agent that zone {zone.Id} needs: no table has a concentration for its hazard, so that design is needed");
            return null;
        }
        var pressure = layout.AmbientPressure.Pascals;
        var (mass, source) = (agent.Mass(space.Whole, design, space.Coldest.Kelvins, pressure), zone.Design is null ? agent.Source : "stated in the document");
        if (agent.Agent.Id == "carbon-dioxide" && layout.Application == Application.MarineEngineSpace)
        {
            var air = zone.AirBottle;
            var rule = Flooding.SmallVesselCarbonDioxide(space.Net, air?.Volume.CubicMeters ?? 0, air is null ? 0 : (air.Pressure.Pascals - pressure) / Bar);
            notes.Assume(zone.Id, "volume", "the gross volume as well", "the rule for small vessels has carbon dioxide by the gross volume, which is never less; where it is more, more is needed");
            if (rule > mass) (mass, source) = (rule, $"{source}; more by {Flooding.SmallVesselSource}");
        }
        // Compressed air that stays in its bottle makes the agent stronger: harm is judged without it.
        Mass? most = agent.Agent.HighestUnharmed is { } unharmed ? Mass.FromKilograms(agent.Mass(space.Net, unharmed, space.Hottest.Kelvins, pressure)) : null;
        return new(design, source, space.Coldest, Volume.FromCubicMeters(space.Whole), Mass.FromKilograms(mass), most, pressure / Standard);
    }

    static ZoneExposure Exposure(Layout layout, FloodingAgent agent, Space space, MassSpan mass)
    {
        var pressure = layout.AmbientPressure.Pascals;
        var least = agent.Concentration(space.Whole, mass.Least.Kilograms, space.Coldest.Kelvins, pressure);
        var most = agent.Concentration(space.Net, mass.Most.Kilograms, space.Hottest.Kelvins, pressure);
        var band = ExposureBand.Of(agent.Agent, most);
        return new(least, most, space.Hottest, Flooding.Oxygen(most), agent.Agent.HighestUnharmed, agent.Agent.LowestHarmful, band?.Time, band?.Source);
    }

    static ZoneAir? Air(Layout layout, Zone zone, FloodingAgent? agent, ZoneMasses masses, ImmutableArray<int> nozzles, Space? space, FloodingNeed? need, ZoneExposure? exposure)
    {
        if (zone is not { Volume: { } volume, Airflow: { } airflow }) return null;
        var (v, q) = (volume.CubicMeters, airflow.CubicMetersPerSecond);
        if (q == 0) return new(0, null, null, null);
        double? flowing = agent is not null && space is not null && masses.LeastFlow(nozzles) is { } flow
            ? Flooding.ThroughFlow(flow, agent.SpecificVolume(space.Coldest.Kelvins, layout.AmbientPressure.Pascals), q) : null;
        // Air that goes through while the agent comes holds the concentration under that of both streams.
        var reached = Math.Min(exposure?.Least ?? 0, flowing ?? 1);
        Duration? holds = need is not null && exposure is not null ? Duration.FromSeconds(reached > need.Design ? Flooding.ThinningTime(v, q, need.Design / reached) : 0) : null;
        return new(60 * q / v, Duration.FromSeconds(Flooding.ThinningTime(v, q, 0.5)), flowing, holds);
    }

    static string Celsius(Temperature temperature) => string.Create(CultureInfo.InvariantCulture, $"{temperature.DegreesCelsius:0.##} °C");

    // Net volume alone and with free air from bottles, m³.
    sealed record Space(double Net, double Whole, Temperature Coldest, Temperature Hottest);
}
