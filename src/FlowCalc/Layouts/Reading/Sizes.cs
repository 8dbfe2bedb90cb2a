using FlowCalc.Quantities;

namespace FlowCalc.Layouts.Reading;

/// <summary>The ranges of every size in a document.</summary>
static class Sizes
{
    const double Bar = 1e5, Degree = Math.PI / 180;

    // Kv is m³/h at 1 bar, K L/min at 1 bar.
    static readonly double RootBar = Math.Sqrt(Bar);

    public static readonly SizeRange Bore = new(QuantityKind.Length, "a bore", 1e-6, 1, "0.001 mm to 1 m");
    public static readonly SizeRange OutsideDiameter = new(QuantityKind.Length, "an outside diameter", 1e-6, 2, "0.001 mm to 2 m");
    public static readonly SizeRange Wall = new(QuantityKind.Length, "a wall", 0, 1, "over 0 to 1 m", IsOpen: true);
    public static readonly SizeRange Roughness = new(QuantityKind.Length, "a roughness", 0, 0.05, "0 to 5 % of the bore");
    public static readonly SizeRange RunLength = new(QuantityKind.Length, "a run's length", 0, 10_000, "0 to 10 km");
    public static readonly SizeRange Rise = new(QuantityKind.Length, "a rise", -10_000, 10_000, "-10 km to 10 km");
    public static readonly SizeRange Coordinate = new(QuantityKind.Length, "a coordinate", -10_000, 10_000, "-10 km to 10 km");
    public static readonly SizeRange BendAngle = new(QuantityKind.Angle, "a bend's angle", 0, 180 * Degree, "over 0 to 180°", IsOpen: true);
    public static readonly SizeRange BendRadius = new(QuantityKind.Length, "a bend's radius", 0, 100, "over 0 to 100 m, and half the bore or more", IsOpen: true);
    public static readonly SizeRange ElbowAngle = new(QuantityKind.Angle, "an elbow's angle", 0, 150 * Degree, "over 0 to 150°", IsOpen: true);
    public static readonly SizeRange FittingLength = new(QuantityKind.Length, "a fitting's length", 0, 100, "0 to 100 m");
    public static readonly SizeRange FittingPlace = new(QuantityKind.Length, "a fitting's place", 0, 10_000, "0 to the run's length");
    public static readonly SizeRange Insertion = new(QuantityKind.Length, "an insertion", 0, 10, "0 to 10 m");
    public static readonly SizeRange Grip = new(QuantityKind.Length, "a grip", 0, 10, "0 to 10 m");
    public static readonly SizeRange CentreToStop = new(QuantityKind.Length, "a length from centre to stop", 0, 10, "0 to 10 m");
    public static readonly SizeRange Thread = new(QuantityKind.Length, "a thread", 1e-3, 1, "1 mm to 1 m");
    public static readonly SizeRange Panel = new(QuantityKind.Length, "a panel's thickness", 0, 1, "over 0 to 1 m", IsOpen: true);
    public static readonly SizeRange StockLength = new(QuantityKind.Length, "a stock length", 1e-3, 10_000, "1 mm to 10 km");
    public static readonly SizeRange Kerf = new(QuantityKind.Length, "a kerf", 0, 0.1, "0 to 100 mm");
    public static readonly SizeRange Squaring = new(QuantityKind.Length, "what squaring takes", 0, 0.1, "0 to 100 mm");
    public static readonly SizeRange ClipSpacing = new(QuantityKind.Length, "a distance between clips", 0.01, 100, "10 mm to 100 m");
    public static readonly SizeRange ClipPlace = new(QuantityKind.Length, "a clip's place", 0, 10_000, "0 to the run's length");
    public static readonly SizeRange HotPlace = new(QuantityKind.Length, "a place", 0, 10_000, "0 to the run's length");
    public static readonly SizeRange HotTemperature = new(QuantityKind.Temperature, "a temperature", 173.15, 1_773.15, "-100 to 1500 °C");

    public static readonly SizeRange Hole = new(QuantityKind.Length, "an orifice's diameter", 1e-6, 1, "0.001 mm to 1 m");
    public static readonly SizeRange KFactor = new(QuantityKind.KFactor, "a K-factor", 1e-6 / 60_000 / RootBar, 1e6 / 60_000 / RootBar, "0.000001 to 1000000 L/min/bar^0.5");
    public static readonly SizeRange Kv = new(QuantityKind.FlowCoefficient, "a flow coefficient", 1e-6 / 3600 / RootBar, 1e6 / 3600 / RootBar, "0.000001 to 1000000 m3/h");

    public static readonly SizeRange Pressure = new(QuantityKind.Pressure, "a pressure", 0, 1_000 * Bar, "over 0 to 1000 bar absolute", IsOpen: true);
    public static readonly SizeRange AmbientPressure = new(QuantityKind.Pressure, "an ambient pressure", 0.01 * Bar, 10 * Bar, "0.01 to 10 bar absolute");
    public static readonly SizeRange Temperature = new(QuantityKind.Temperature, "a temperature", 173.15, 573.15, "-100 to 300 °C");
    public static readonly SizeRange FreezingPoint = new(QuantityKind.Temperature, "a freezing point", 173.15, 573.15, "-100 to 300 °C");

    public static readonly SizeRange BottleVolume = new(QuantityKind.Volume, "a bottle's volume", 1e-6, 100, "0.001 L to 100 m3");
    public static readonly SizeRange FillMass = new(QuantityKind.Mass, "a fill", 1e-6, 1e6, "0.001 g to 1000000 kg");
    public static readonly SizeRange FillVolume = new(QuantityKind.Volume, "a fill", 1e-9, 100, "0.001 mL to 100 m3");
    public static readonly SizeRange FillDensity = new(QuantityKind.Density, "a fill density", 1e-3, 25_000, "0.001 to 25000 kg/m3");
    public static readonly SizeRange EmptyMass = new(QuantityKind.Mass, "an empty mass", 1e-6, 1e6, "0.001 g to 1000000 kg");
    public static readonly SizeRange BottleDiameter = new(QuantityKind.Length, "a bottle's inside diameter", 1e-3, 10, "1 mm to 10 m");
    public static readonly SizeRange BottleLength = new(QuantityKind.Length, "a bottle's inside length", 1e-3, 100, "1 mm to 100 m");
    public static readonly SizeRange ShellThickness = new(QuantityKind.Length, "a shell's thickness", 0, 1, "over 0 to 1 m", IsOpen: true);
    public static readonly SizeRange DipTubeLength = new(QuantityKind.Length, "a dip tube's length", 0, 100, "0 to 100 m");
    public static readonly SizeRange OpeningTime = new(QuantityKind.Time, "an opening time", 0, 3_600, "0 to 3600 s");

    public static readonly SizeRange Density = new(QuantityKind.Density, "a density", 1, 25_000, "1 to 25000 kg/m3");
    public static readonly SizeRange Viscosity = new(QuantityKind.Viscosity, "a viscosity", 1e-6, 1_000, "0.001 to 1000000 mPa·s");

    public static readonly SizeRange Within = new(QuantityKind.Time, "a time", 0, 86_400, "0 to 86400 s");
    public static readonly SizeRange NitrogenLag = new(QuantityKind.Time, "a lag", 0, 3_600, "0 to 3600 s");

    public static readonly SizeRange MountedMass = new(QuantityKind.Mass, "a mass", 1e-3, 1e6, "1 g to 1000000 kg");
    public static readonly SizeRange MountCoordinate = new(QuantityKind.Length, "a coordinate of a bolt", -10, 10, "-10 to 10 m");
    public static readonly SizeRange BoltSide = new(QuantityKind.Length, "a side of a rectangle of bolts", 0, 10, "over 0 to 10 m", IsOpen: true);
    public static readonly SizeRange Washer = new(QuantityKind.Length, "a washer's or spreader's width", 0, 1, "over 0 to 1 m", IsOpen: true);
    public static readonly SizeRange BoltEdge = new(QuantityKind.Length, "a distance to the edge", 0, 1, "over 0 to 1 m", IsOpen: true);
    public static readonly SizeRange Preload = new(QuantityKind.Force, "a preload", 0, 1e6, "0 to 1000 kN");
    public static readonly SizeRange Engagement = new(QuantityKind.Length, "an engagement", 1e-3, 1, "1 mm to 1 m");
    public static readonly SizeRange Strength = new(QuantityKind.Stress, "a strength", 1e6, 1e10, "1 to 10000 MPa");
    public static readonly SizeRange Plate = new(QuantityKind.Length, "a plate's thickness", 1e-4, 1, "0.1 mm to 1 m");
    public static readonly SizeRange PanelSpan = new(QuantityKind.Length, "a panel's span", 1e-3, 10, "1 mm to 10 m");
    public static readonly SizeRange StripWidth = new(QuantityKind.Length, "a foot's width", 1e-3, 1, "1 mm to 1 m");
    public static readonly SizeRange StripArm = new(QuantityKind.Length, "a distance from the bolt", 1e-3, 1, "1 mm to 1 m");
    public static readonly SizeRange Spacer = new(QuantityKind.Length, "a spacer's length", 0, 1, "0 to 1 m");
    public static readonly SizeRange StrapPlace = new(QuantityKind.Length, "a strap's place", -50, 50, "-50 to 50 m, from the middle of the bottle towards its outlet end");
    public static readonly SizeRange StrapWidth = new(QuantityKind.Length, "a strap's width", 1e-3, 1, "1 mm to 1 m");
    public static readonly SizeRange StrapThickness = new(QuantityKind.Length, "a strap's thickness", 1e-4, 0.1, "0.1 to 100 mm");
    public static readonly SizeRange Pretension = new(QuantityKind.Force, "a pretension", 0, 1e6, "0 to 1000 kN");
    public static readonly SizeRange StopCapacity = new(QuantityKind.Force, "what a stop bears", 0, 1e9, "over 0 to 1000000 kN", IsOpen: true);
    public static readonly SizeRange Wrap = new(QuantityKind.Angle, "a wrap", 10 * Degree, 350 * Degree, "10 to 350°");
    public static readonly SizeRange Cradle = new(QuantityKind.Angle, "a cradle's arc", 10 * Degree, 180 * Degree, "10 to 180°");

    public static readonly NumberRange Friction = new("a friction coefficient", 0, 2, "0 to 2");
    public static readonly NumberRange LoadFactor = new("an acceleration in g", 0, 1_000, "over 0 to 1000", IsOpen: true);
    public static readonly SizeRange Voltage = new(QuantityKind.Voltage, "a voltage", 0, 1_000, "over 0 to 1000 V", IsOpen: true);
    public static readonly SizeRange ForwardVoltage = new(QuantityKind.Voltage, "a forward voltage", 0, 100, "over 0 to 100 V", IsOpen: true);
    public static readonly SizeRange Resistance = new(QuantityKind.Resistance, "a resistance", 1e-6, 1e6, "0.001 mohm to 1000 kohm");
    public static readonly SizeRange Current = new(QuantityKind.Current, "a current", 1e-6, 1e4, "0.001 mA to 10000 A");
    public static readonly SizeRange Capacitance = new(QuantityKind.Capacitance, "a capacitance", 1e-9, 1e3, "0.001 µF to 1000 F");
    public static readonly SizeRange FiringEnergy = new(QuantityKind.Energy, "an energy", 1e-9, 1e6, "0.000001 mJ to 1000000 J");
    public static readonly SizeRange Pulse = new(QuantityKind.Time, "a pulse", 0, 3_600, "over 0 to 3600 s", IsOpen: true);
    public static readonly SizeRange WireLength = new(QuantityKind.Length, "a wire's length", 0, 1_000, "over 0 to 1 km", IsOpen: true);
    public static readonly SizeRange WireArea = new(QuantityKind.Area, "a wire's cross-section", 1e-9, 1e-3, "0.001 to 1000 mm2");
    public static readonly SizeRange WireTemperature = new(QuantityKind.Temperature, "a wire's temperature", 173.15, 573.15, "-100 to 300 °C");

    public static readonly SizeRange GrossMass = new(QuantityKind.Mass, "a gross mass", 1e-6, 1e6, "0.001 g to 1000000 kg");
    public static readonly SizeRange ScaleStep = new(QuantityKind.Mass, "a scale's step", 1e-9, 1e3, "0.000001 g to 1000 kg");

    public static readonly SizeRange Altitude = new(QuantityKind.Length, "an altitude", -500, 9_000, "-500 to 9000 m above the sea");
    public static readonly SizeRange SprayAngle = new(QuantityKind.Angle, "the full angle of a spray's cone", 1 * Degree, 175 * Degree, "1 to 175°");
    public static readonly SizeRange Throw = new(QuantityKind.Length, "a distance of a spray", 0, 100, "0 to 100 m");
    public static readonly SizeRange Edge = new(QuantityKind.Length, "a part of an edge", -1_000, 1_000, "-1000 to 1000 m");
    public static readonly SizeRange ZoneVolume = new(QuantityKind.Volume, "a zone's volume", 1e-6, 1e6, "0.001 L to 1000000 m3");
    public static readonly SizeRange ZoneTemperature = new(QuantityKind.Temperature, "a zone's temperature", 173.15, 573.15, "-100 to 300 °C");
    public static readonly SizeRange Airflow = new(QuantityKind.VolumeFlow, "an airflow", 0, 1e5, "0 to 100000 m3/s");
    public static readonly SizeRange Openings = new(QuantityKind.Area, "the area of openings", 0, 1e4, "0 to 10000 m2");
    public static readonly SizeRange Leaving = new(QuantityKind.Time, "a time to leave", 0, 86_400, "0 to 86400 s");
    public static readonly SizeRange AirBottleVolume = new(QuantityKind.Volume, "an air bottle's volume", 1e-6, 100, "0.001 L to 100 m3");

    public static readonly NumberRange Concentration = new("a concentration as a part of the volume", 0, 0.95, "over 0 to 0.95", IsOpen: true);
    public static readonly SizeRange CollectedVolume = new(QuantityKind.Volume, "a volume that was collected", 0, 100, "0 to 100 m3");
    public static readonly SizeRange CollectedMass = new(QuantityKind.Mass, "a mass that was collected", 0, 1e5, "0 to 100000 kg");
    public static readonly SizeRange CollectingTime = new(QuantityKind.Time, "a time of collecting", 0.1, 86_400, "0.1 to 86400 s");
    public static readonly SizeRange ReadVolumeFlow = new(QuantityKind.VolumeFlow, "a volume flow that was read", 0, 10, "0 to 10 m3/s");
    public static readonly SizeRange ReadMassFlow = new(QuantityKind.MassFlow, "a mass flow that was read", 0, 1e4, "0 to 10000 kg/s");
    public static readonly SizeRange ReadDischargeTime = new(QuantityKind.Time, "a time of a discharge", 0.1, 86_400, "0.1 to 86400 s");

    public static readonly NumberRange Months = new("an interval in months", 1, 1_200, "a whole number, 1 to 1200");
    public static readonly NumberRange TemperatureCoefficient = new("a temperature coefficient in 1/K", 0, 0.008, "0 to 0.008");
    public static readonly NumberRange Tolerance = new("a tolerance", 0, 0.5, "0 to 0.5");
    public static readonly NumberRange Gauge = new("a gauge", 0, 40, "a whole number, 0 to 40");

    public static readonly NumberRange Uncertainty = new("an uncertainty as a part", 1e-4, 1, "0.0001 to 1");

    public static readonly NumberRange Count = new("a count", 1, 10_000, "a whole number, 1 to 10000");
    public static readonly NumberRange LossCoefficient = new("a loss coefficient", 0, 1e9, "0 to 1000000000");
    public static readonly NumberRange DischargeCoefficient = new("a discharge coefficient", 1e-6, 1, "0.000001 to 1");
    public static readonly NumberRange Share = new("a share", 0, 1, "over 0 to 1", IsOpen: true);
    public static readonly NumberRange Part = new("a part", 0, 1, "over 0 to 1", IsOpen: true);
    public static readonly NumberRange MassFraction = new("a mass fraction", 0, 1, "over 0 to 1", IsOpen: true);
    public static readonly NumberRange Spare = new("a spare", 0, 1, "0 to 1");
    public static readonly NumberRange Film = new("a film", 0, 0.5, "0 to 0.5");
    public static readonly NumberRange DirectionPart = new("a part of a direction", -1e6, 1e6, "-1000000 to 1000000");
    public static readonly NumberRange Acceleration = new("an acceleration in g", -1_000, 1_000, "-1000 to 1000");
    public static readonly NumberRange Limit = new("a limit", -1e9, 1e9, "-1000000000 to 1000000000");
}
