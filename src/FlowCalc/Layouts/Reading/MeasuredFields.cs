namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a test.</summary>
enum MeasuredField
{
    Agent,
    Temperature,
    SupplyPressure,
    Time,
    Collected,
    Flows,
    Pressures,
    DischargeTime,
    Uncertainty,
    Suspects,
    Note,
}

/// <summary>The members of a reading that states its uncertainty.</summary>
enum MeasuredReadingField
{
    Reading,
    Uncertainty,
    Note,
}
