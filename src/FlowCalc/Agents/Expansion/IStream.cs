namespace FlowCalc.Agents;

/// <summary>An agent of given composition and total enthalpy on its way from the bottle: through tubes at constant enthalpy, out of nozzles at constant entropy.</summary>
internal interface IStream
{
    /// <summary>Pressure of a phase boundary on the way through a tube, Pa; NaN where there is none.</summary>
    double Kink { get; }

    /// <summary>Pressure below which the data end and liquid and gas keep their parts, Pa; NaN where there is none.</summary>
    double Floor { get; }

    /// <summary>State in a tube: equilibrium at the total enthalpy, kinetic energy left out.</summary>
    /// <param name="pressure">Absolute pressure, Pa.</param>
    StreamState At(double pressure);

    /// <summary>The way out of a nozzle from where the stream is in the tube.</summary>
    /// <param name="stagnation">Absolute total pressure before the nozzle, Pa.</param>
    INozzleWay Nozzle(double stagnation);
}
