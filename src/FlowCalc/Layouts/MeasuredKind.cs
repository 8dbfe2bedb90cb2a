namespace FlowCalc.Layouts;

/// <summary>What a reading of a test is of.</summary>
public enum MeasuredKind
{
    /// <summary>Mass flow out of a nozzle, kg/s.</summary>
    Flow,

    /// <summary>Absolute static pressure in the tube at a point, Pa.</summary>
    Pressure,

    /// <summary>Time from the open valve until gas comes out of the last nozzle, s.</summary>
    DischargeTime,
}
