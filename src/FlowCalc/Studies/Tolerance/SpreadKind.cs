namespace FlowCalc.Studies.Tolerance;

/// <summary>What of a layout may be spread.</summary>
public enum SpreadKind
{
    /// <summary>Bore of a tube: one variable a size of tube, since its runs come off one coil; one a run that states its own bore.</summary>
    Bore,

    /// <summary>Roughness of a tube: one variable a size of tube; one a run that states its own bore.</summary>
    Roughness,

    /// <summary>Developed length of a run: one variable a run, each being cut by itself. What it is longer or shorter by is straight tube; rise and places stay as drawn.</summary>
    Length,

    /// <summary>K-factor of a nozzle, or discharge coefficient times area of its orifice: one variable a nozzle.</summary>
    KFactor,

    /// <summary>Charge pressure of the bottle; parts are of the gauge pressure.</summary>
    ChargePressure,

    /// <summary>Agent in the bottle.</summary>
    Fill,

    /// <summary>Temperature of agent and bottle; of a discharge every case is warmer or colder by as much.</summary>
    Temperature,
}
