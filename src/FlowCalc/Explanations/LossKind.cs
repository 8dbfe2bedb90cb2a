namespace FlowCalc.Explanations;

/// <summary>As what an answer books a drop of pressure.</summary>
public enum LossKind
{
    /// <summary>Outlet of the bottle.</summary>
    Outlet,

    /// <summary>Friction of straight tube.</summary>
    Tube,

    /// <summary>Formed bends.</summary>
    Bends,

    /// <summary>Dividing flow in tees.</summary>
    Tees,

    /// <summary>Fittings and extra loss coefficients.</summary>
    Fittings,

    /// <summary>Steps in bore.</summary>
    BoreChanges,

    /// <summary>Height gained.</summary>
    Rise,
}
