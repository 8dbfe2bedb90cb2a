namespace FlowCalc.Studies.Reading;

/// <summary>What the numbers of a spread are.</summary>
enum SpreadMeasure
{
    /// <summary>Parts of the design value.</summary>
    Part,

    /// <summary>Differences to the design value, SI.</summary>
    Difference,

    /// <summary>The ends themselves, SI.</summary>
    End,
}
