namespace FlowCalc.Workbench.Drawings;

/// <summary>The symbols of a drawing.</summary>
enum DrawnSymbol
{
    /// <summary>A bottle.</summary>
    Bottle,

    /// <summary>A supply held at a pressure.</summary>
    HeldSupply,

    /// <summary>A tee fed through its run.</summary>
    Tee,

    /// <summary>A tee fed through its branch.</summary>
    Bullhead,

    /// <summary>A junction without loss.</summary>
    Junction,

    /// <summary>A step in bore.</summary>
    Reducer,

    /// <summary>A nozzle.</summary>
    Nozzle,

    /// <summary>A closed end.</summary>
    Cap,

    /// <summary>A joint through a panel.</summary>
    Bulkhead,

    /// <summary>A straight joint.</summary>
    Union,

    /// <summary>A sharp corner.</summary>
    Elbow,

    /// <summary>A valve.</summary>
    Valve,

    /// <summary>Any other fitting.</summary>
    OtherFitting,
}
