using System.Collections.Immutable;
using FlowCalc.Layouts.Reading.Coverage;
using FlowCalc.Layouts.Reading.Mounts;

namespace FlowCalc.Layouts.Reading;

/// <summary>The fields of every kind of object in a document; the schema has the same.</summary>
static class LayoutFields
{
    public static readonly FieldTable<DocumentField> Document = new("a layout");
    public static readonly FieldTable<QuantityField> Quantity = new("a quantity");
    public static readonly FieldTable<AgentField> Agent = new("an agent");
    public static readonly FieldTable<SupplyField> Supply = new("a supply");
    public static readonly FieldTable<BottleField> Bottle = new("a bottle");
    public static readonly FieldTable<BottleShapeField> BottleShape = new("a bottle's shape");
    public static readonly FieldTable<BottleWallField> BottleWall = new("a bottle's wall");
    public static readonly FieldTable<OutletField> Outlet = new("an outlet");
    public static readonly FieldTable<DipTubeField> DipTube = new("a dip tube");
    public static readonly FieldTable<RegulatorField> Regulator = new("a regulator");
    public static readonly FieldTable<RestrictorField> Restrictor = new("a restrictor");
    public static readonly FieldTable<TubeField> Tube = new("a tube");
    public static readonly FieldTable<NozzleField> Nozzle = new("a nozzle of nozzles");
    public static readonly FieldTable<OrificeField> Orifice = new("an orifice");
    public static readonly FieldTable<FittingField> Fitting = new("a fitting");
    public static readonly FieldTable<ZoneField> Zone = new("a zone");
    public static readonly FieldTable<PointField> Point = new("a point");
    public static readonly FieldTable<RunField> Run = new("a run");
    public static readonly FieldTable<BendField> Bend = new("a bend");
    public static readonly FieldTable<PlacedFittingField> PlacedFitting = new("a fitting in its place");
    public static readonly FieldTable<CasesField> Cases = new("the cases");
    public static readonly FieldTable<AttitudeField> Attitude = new("an attitude");
    public static readonly FieldTable<RequirementField> Requirement = new("a requirement");
    public static readonly FieldTable<LimitField> Limit = new("a limit");
    public static readonly FieldTable<ModelField> Model = new("a model");
    public static readonly FieldTable<CuttingField> Cutting = new("the cutting");
    public static readonly FieldTable<StockField> Stock = new("a stock");
    public static readonly FieldTable<JointField> Joint = new("a joint");
    public static readonly FieldTable<HotPlaceField> HotPlace = new("a hot place");
    public static readonly FieldTable<MountField> Mount = new("a mount");
    public static readonly FieldTable<MountBoltsField> MountBolts = new("a group of bolts");
    public static readonly FieldTable<TappedHoleField> TappedHole = new("a thread");
    public static readonly FieldTable<MountMaterialField> MountMaterial = new("a material");
    public static readonly FieldTable<MountPanelField> MountPanel = new("a panel");
    public static readonly FieldTable<SpreaderField> Spreader = new("a spreader");
    public static readonly FieldTable<MountFootField> MountFoot = new("a foot");
    public static readonly FieldTable<MountAdapterField> MountAdapter = new("an adapter");
    public static readonly FieldTable<MountStrapField> MountStrap = new("a strap");
    public static readonly FieldTable<EndStopField> EndStop = new("an end stop");
    public static readonly FieldTable<AddedMassField> AddedMass = new("a mass");
    public static readonly FieldTable<MountLoadField> MountLoad = new("a load case");

    public static readonly FieldTable<CircuitField> Circuit = new("a circuit");
    public static readonly FieldTable<CircuitSourceField> CircuitSource = new("a circuit's source");
    public static readonly FieldTable<CircuitPartField> CircuitPart = new("a part of the circuit");

    public static readonly FieldTable<ServiceField> Service = new("the service");
    public static readonly FieldTable<ServiceRuleField> ServiceRule = new("a rule of upkeep");
    public static readonly FieldTable<WeighingField> Weighing = new("a weighing");
    public static readonly FieldTable<GaugeField> Gauge = new("a gauge");
    public static readonly FieldTable<CoverageField> Coverage = new("the coverage");
    public static readonly FieldTable<SurfaceField> Surface = new("a surface");
    public static readonly FieldTable<TargetField> Target = new("a target or a person");
    public static readonly FieldTable<BodyField> Body = new("a body");
    public static readonly FieldTable<SprayField> Spray = new("a spray");
    public static readonly FieldTable<AirBottleField> AirBottle = new("an air bottle");

    public static readonly FieldTable<MeasuredField> Measured = new("a test");
    public static readonly FieldTable<MeasuredReadingField> MeasuredReading = new("a reading");

    /// <summary>Every table by its name among the schema's definitions; the document itself is the schema's root.</summary>
    public static ImmutableArray<(string Definition, IFieldTable Table)> All { get; } =
    [
        ("", Document), ("quantity", Quantity), ("agentDescription", Agent), ("supply", Supply), ("bottle", Bottle), ("bottleShape", BottleShape),
        ("bottleWall", BottleWall), ("outlet", Outlet), ("dipTube", DipTube), ("regulator", Regulator), ("restrictor", Restrictor), ("tube", Tube),
        ("nozzle", Nozzle), ("orifice", Orifice), ("fitting", Fitting), ("zone", Zone), ("point", Point), ("run", Run), ("bend", Bend),
        ("placedFitting", PlacedFitting), ("cases", Cases), ("attitude", Attitude), ("requirement", Requirement), ("limit", Limit), ("model", Model),
        ("cutting", Cutting), ("stock", Stock), ("joint", Joint), ("hotPlace", HotPlace),
        ("mount", Mount), ("mountBolts", MountBolts), ("tappedHole", TappedHole), ("mountMaterial", MountMaterial), ("mountPanel", MountPanel), ("spreader", Spreader),
        ("mountFoot", MountFoot), ("mountAdapter", MountAdapter), ("mountStrap", MountStrap), ("endStop", EndStop), ("addedMass", AddedMass), ("mountLoad", MountLoad),
        ("circuit", Circuit), ("circuitSource", CircuitSource), ("circuitPart", CircuitPart),
        ("service", Service), ("serviceRule", ServiceRule), ("weighing", Weighing), ("gauge", Gauge),
        ("coverage", Coverage), ("surface", Surface), ("target", Target), ("body", Body), ("spray", Spray), ("airBottle", AirBottle),
        ("measured", Measured), ("measuredReading", MeasuredReading),
    ];
}
