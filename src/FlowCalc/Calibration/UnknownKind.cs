namespace FlowCalc.Calibration;

/// <summary>What a calibration finds the size of.</summary>
public enum UnknownKind
{
    /// <summary>Pressure of the test's supply over that which was read, both gauge; of a bottle, of its charge. A plain number.</summary>
    PressureFactor,

    /// <summary>Roughness of all tube, m.</summary>
    Roughness,

    /// <summary>Bore of every tube over that which was drawn, a plain number.</summary>
    BoreFactor,

    /// <summary>K-factor of one make of nozzle over that which was stated, a plain number.</summary>
    NozzleFactor,

    /// <summary>Loss coefficient that a run has besides, on its own velocity head, a plain number.</summary>
    LossCoefficient,
}
