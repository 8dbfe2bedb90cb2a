namespace FlowCalc.Stock;

/// <summary>What a material of a mount is.</summary>
public enum MountMaterialKind
{
    /// <summary>Plain or alloyed steel.</summary>
    Steel,

    /// <summary>Stainless steel.</summary>
    Stainless,

    /// <summary>An aluminium alloy.</summary>
    Aluminium,

    /// <summary>Titanium.</summary>
    Titanium,

    /// <summary>No metal: a laminate, plastic or webbing.</summary>
    Other,
}
