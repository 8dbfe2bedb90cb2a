namespace FlowCalc.Discharge;

/// <summary>How far a case is followed.</summary>
internal enum DischargeDepth
{
    /// <summary>Only the bottle before its valve opens.</summary>
    AtRest,

    /// <summary>For times and masses alone: without band and curves, and without what is told of pressures at nozzles.</summary>
    Brief,

    /// <summary>For its numbers, to a thousandth: without band, curves and time scales.</summary>
    Bare,

    /// <summary>For all that is found in it but what hangs on the band: without band, curves and time scales, its numbers those of the whole. Of agents that expand; a liquid is then followed whole.</summary>
    WithoutBand,

    /// <summary>With all that there is to tell.</summary>
    Whole,
}
