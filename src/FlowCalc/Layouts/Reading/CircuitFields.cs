namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a circuit.</summary>
enum CircuitField
{
    Chassis,
    Source,
    Parts,
    Corrosion,
    Note,
}

/// <summary>The members of a circuit's source.</summary>
enum CircuitSourceField
{
    Kind,
    Minus,
    Plus,
    Voltage,
    InternalResistance,
    ColdVoltage,
    ColdResistance,
    HighestVoltage,
    Capacitance,
    Own,
    Note,
}

/// <summary>The members of a part of the circuit.</summary>
enum CircuitPartField
{
    Kind,
    Between,
    Resistance,
    Length,
    CrossSection,
    Awg,
    Cable,
    Temperature,
    TemperatureCoefficient,
    ClosedIn,
    Purpose,
    Rating,
    Characteristic,
    Type,
    AllFire,
    NoFire,
    Pulse,
    AllFireEnergy,
    RatedVoltage,
    Tolerance,
    ForwardVoltage,
    LightsAt,
    Note,
}
