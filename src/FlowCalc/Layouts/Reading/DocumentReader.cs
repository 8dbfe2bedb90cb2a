using System.Text.Json;
using FlowCalc.Agents;
using FlowCalc.Layouts.Coverage;
using FlowCalc.Layouts.Reading.Coverage;
using FlowCalc.Layouts.Reading.Mounts;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a document.</summary>
enum DocumentField
{
    Schema,
    Format,
    Title,
    Note,
    Application,
    Agent,
    AmbientPressure,
    Altitude,
    Temperature,
    Supply,
    Tubes,
    Nozzles,
    Fittings,
    Zones,
    Points,
    Runs,
    Cases,
    Requirement,
    Limits,
    Model,
    Cutting,
    Mount,
    Circuit,
    Service,
    Coverage,
    Measured,
}

/// <summary>Reads a whole document.</summary>
static class DocumentReader
{
    public const int LongestTitle = 1_000;
    public static readonly Vocabulary Applications = new("motorsport", "marine-engine-space", "machine", "electrical-cabinet");

    /// <summary>The word of an application in documents and tables; null where none is named.</summary>
    public static string? WordOf(Application application) => application == Application.General ? null : Applications.Words[(int)application - 1];

    /// <summary>The layout; null where the log has faults.</summary>
    public static Layout? Read(ReadingContext context, JsonValue element)
    {
        if (!LayoutFields.Document.TryRead(context, element, out var root)) return null;
        ReadFormat(context, root);
        TextValue.Read(context, root[DocumentField.Schema], "$schema");
        var title = TextValue.Read(context, root[DocumentField.Title], "a title", LongestTitle);
        var note = TextValue.Read(context, root[DocumentField.Note], "a note");
        var application = TextValue.Choice(context, root[DocumentField.Application], Applications);
        ReadAmbient(context, root);
        root.Requires(context, DocumentField.Agent, "the agent: an id of the catalogue, a mixture, or a liquid of one's own");
        var agent = AgentReader.Read(context, root[DocumentField.Agent]);
        root.Requires(context, DocumentField.Supply, "what drives the flow: " + SupplyReader.Right);
        var supply = SupplyReader.Read(context, root[DocumentField.Supply], agent);
        var temperature = ReadTemperature(context, root, agent, supply);
        var (stock, coverage) = ReadStock(context, root);
        var tree = TreeReader.Read(context, root, stock);
        var cases = CasesReader.Read(context, root[DocumentField.Cases]);
        var requirement = RequirementReader.Read(context, root[DocumentField.Requirement]);
        var limits = LimitReader.Read(context, root[DocumentField.Limits]);
        var model = ModelReader.Read(context, root[DocumentField.Model]);
        var cutting = CuttingReader.Read(context, root[DocumentField.Cutting], stock.Tubes);
        if (context.Options.NeedsMount) root.Requires(context, DocumentField.Mount, "how the bottle is held: an object with normal, bolts, and bottleAt or centreOfMass");
        var mount = MountReader.Read(context, root[DocumentField.Mount], supply);
        var circuit = CircuitReader.Read(context, root[DocumentField.Circuit]);
        var service = ServiceReader.Read(context, root[DocumentField.Service], supply);
        var measured = MeasuredReader.Read(context, root[DocumentField.Measured], agent, supply.Supply, tree);

        if (!context.Faults.IsEmpty || agent is null || supply.Supply is null || tree is null) return null;
        return new Layout
        {
            Title = title,
            Note = note,
            Application = (Application)(application + 1),
            Agent = agent,
            AmbientPressure = Pressure.FromPascals(context.Ambient),
            Temperature = Temperature.FromKelvins(temperature),
            Supply = supply.Supply,
            Zones = [.. stock.Zones.Entries],
            Points = tree.Points,
            Runs = tree.Runs,
            Tubes = tree.Tubes,
            Nozzles = [.. Types(stock.Nozzles)],
            Cases = cases,
            Requirement = requirement,
            Limits = limits,
            Film = model.Film,
            NozzleModel = model.Nozzles,
            NitrogenLag = model.NitrogenLag,
            Cutting = cutting,
            Mount = mount,
            Circuit = circuit,
            Service = service,
            Coverage = coverage,
            Measured = measured,
            Assumptions = context.Assumptions.ToArray(),
        };
    }

    static IEnumerable<NozzleType> Types(NamedEntries<NozzleOpening> nozzles)
    {
        foreach (var name in nozzles.Names)
            if (nozzles.TryFind(name, out var opening) && opening is not null) yield return new NozzleType(name, opening.KFactor, opening.Orifice, opening.PressureRange) { Spray = opening.Spray };
    }

    static void ReadFormat(ReadingContext context, in Members<DocumentField> root)
    {
        if (!root.Requires(context, DocumentField.Format, "1, the version of this format")) return;
        var format = root[DocumentField.Format];
        if (format.ValueKind is not JsonValueKind.Number || !format.TryGetDouble(out var version) || version != 1)
            context.Faults.Add(format, $"read {Said.Value(format)}: the format read here is the bare number 1");
    }

    static void ReadAmbient(ReadingContext context, in Members<DocumentField> root)
    {
        if (root.Has(DocumentField.Altitude))
        {
            root.Refuses(context, DocumentField.AmbientPressure, "the altitude says it already: give one of them");
            var altitude = QuantityValue.Read(context, root[DocumentField.Altitude], Sizes.Altitude);
            if (double.IsFinite(altitude)) context.Ambient = ReadingContext.StandardAmbient * StandardAtmosphere.PartAt(altitude);
            return;
        }
        if (!root.Has(DocumentField.AmbientPressure)) context.Assumptions.Add("/ambientPressure", "1.01325 bara", "the standard atmosphere, ISO 2533:1975 (from memory)");
        var ambient = PressureValue.ReadAmbient(context, root[DocumentField.AmbientPressure]);
        if (double.IsFinite(ambient)) context.Ambient = ambient;
    }

    static double ReadTemperature(ReadingContext context, in Members<DocumentField> root, Agent? agent, in SupplyDraft supply)
    {
        var element = root[DocumentField.Temperature];
        var isCharge = supply.ChargeTemperatureElement.ValueKind is not JsonValueKind.Undefined;
        var temperature = TemperatureReader.Read(context, root, supply.ChargeTemperature, isCharge);
        // A charge temperature that does not suit the agent has been reported with the bottle.
        var isReported = element.ValueKind is JsonValueKind.Undefined && supply.ChargeTemperature is not null;
        if (agent is not null && double.IsFinite(temperature) && !isReported)
            TemperatureReader.Suits(context, agent, temperature, root.Owner, "temperature", element);
        return temperature;
    }

    static (NamedStock Stock, CoveragePlan? Coverage) ReadStock(ReadingContext context, in Members<DocumentField> root)
    {
        var tubes = NamedEntries<Tube>.Read(context, root[DocumentField.Tubes], "tubes", TubeReader.Own);
        var nozzles = NamedEntries<NozzleOpening>.Read(context, root[DocumentField.Nozzles], "nozzles", NozzleReader.Own);
        var fittings = NamedEntries<Fitting>.Read(context, root[DocumentField.Fittings], "fittings", FittingReader.Own);
        var zones = NamedEntries<Zone>.Read(context, root[DocumentField.Zones], "zones", ZoneReader.Own);
        var (coverage, targets) = CoverageReader.Read(context, root[DocumentField.Coverage], zones);
        return (new NamedStock(tubes, nozzles, fittings, zones, targets), coverage);
    }
}
