using FlowCalc.Layouts.Reading;

namespace FlowCalc.Studies.Reading;

/// <summary>The members of a request for sizes.</summary>
enum SizeField
{
    Note,
    Layout,
    Stock,
    Free,
    Wish,
    Objective,
}

/// <summary>The members of a stock.</summary>
enum StockField
{
    Note,
    Tubes,
    Orifices,
    KFactors,
    Nozzles,
}

/// <summary>The members of a tube of the stock.</summary>
enum StockTubeField
{
    Note,
    Name,
    Tube,
    CostPerMetre,
    MassPerMetre,
}

/// <summary>The members of an orifice of the stock.</summary>
enum StockOrificeField
{
    Note,
    Diameter,
    DischargeCoefficient,
}

/// <summary>The members of a wish.</summary>
enum WishField
{
    Note,
    Deviation,
    Within,
    LeastPressure,
}

/// <summary>The fields of a request for sizes; its schema has the same.</summary>
static class SizeFields
{
    public static readonly FieldTable<SizeField> Request = new("a request for sizes");
    public static readonly FieldTable<StockField> Stock = new("a stock");
    public static readonly FieldTable<StockTubeField> Tube = new("a tube of the stock");
    public static readonly FieldTable<StockOrificeField> Orifice = new("an orifice of the stock");
    public static readonly FieldTable<WishField> Wish = new("a wish");

    /// <summary>The objectives, in the order of <see cref="Sizing.SizingObjective"/>.</summary>
    public static readonly Vocabulary Objectives = new("fewest-changes", "least-cost", "least-mass", "best-balance", "shortest-time");
}
