namespace FlowCalc.Layouts.Coverage;

/// <summary>What would burn in a zone.</summary>
public enum Hazard
{
    /// <summary>Solids that burn at their surface.</summary>
    ClassA,

    /// <summary>Liquids that burn as heptane does: petrol, diesel, oil.</summary>
    ClassB,

    /// <summary>Alcohols and fuels blended with much of them.</summary>
    Alcohol,

    /// <summary>Hydrogen.</summary>
    Hydrogen,

    /// <summary>Metals such as magnesium.</summary>
    Metal,
}
