namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the service.</summary>
enum ServiceField
{
    Manufactured,
    LastService,
    LastTest,
    Rules,
    Weighing,
    Gauge,
    Note,
}

/// <summary>The members of a rule of upkeep.</summary>
enum ServiceRuleField
{
    Basis,
    From,
    Months,
    Note,
}

/// <summary>The members of a weighing.</summary>
enum WeighingField
{
    Stamped,
    Gross,
    Step,
    On,
    Note,
}

/// <summary>The members of a reading of the gauge.</summary>
enum GaugeField
{
    Reading,
    Temperature,
    On,
    Green,
    Note,
}
