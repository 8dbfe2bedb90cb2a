namespace FlowCalc.Discharge;

/// <summary>How heat reaches the cushion while it expands.</summary>
internal enum CushionProcess
{
    /// <summary>It keeps its temperature.</summary>
    Isothermal,

    /// <summary>It takes no heat.</summary>
    Adiabatic,

    /// <summary>p·V to the power n stays constant, with n imposed.</summary>
    Polytropic,

    /// <summary>Heat from the wall through a constant conductance.</summary>
    Conductance,

    /// <summary>Heat from the dry wall and from the liquid's surface by free convection.</summary>
    Convection,
}
