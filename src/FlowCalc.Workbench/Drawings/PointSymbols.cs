using FlowCalc.Layouts;

namespace FlowCalc.Workbench.Drawings;

/// <summary>Which symbol stands for what, and what it is called.</summary>
static class PointSymbols
{
    /// <summary>The symbol of a point.</summary>
    public static DrawnSymbol Of(Layout layout, LayoutPoint point) => point switch
    {
        SupplyPoint => layout.Supply is BottleSupply ? DrawnSymbol.Bottle : DrawnSymbol.HeldSupply,
        Tee tee => tee.FedThrough == TeePort.Branch ? DrawnSymbol.Bullhead : DrawnSymbol.Tee,
        Reducer => DrawnSymbol.Reducer,
        Nozzle => DrawnSymbol.Nozzle,
        Cap => DrawnSymbol.Cap,
        _ => DrawnSymbol.Junction,
    };

    /// <summary>The symbol of a fitting in a run.</summary>
    public static DrawnSymbol Of(Fitting fitting) => fitting.Kind switch
    {
        Fitting.BulkheadUnion => DrawnSymbol.Bulkhead,
        "union" => DrawnSymbol.Union,
        Fitting.Elbow => DrawnSymbol.Elbow,
        var kind when kind.Contains("valve", StringComparison.OrdinalIgnoreCase) => DrawnSymbol.Valve,
        _ => DrawnSymbol.OtherFitting,
    };

    /// <summary>What a point is.</summary>
    public static string Word(Layout layout, LayoutPoint point) => Word(Of(layout, point)).ToLowerInvariant();

    /// <summary>What a symbol stands for.</summary>
    public static string Word(DrawnSymbol symbol) => symbol switch
    {
        DrawnSymbol.Bottle => "Bottle",
        DrawnSymbol.HeldSupply => "Supply at a held pressure",
        DrawnSymbol.Tee => "Tee, fed through its run",
        DrawnSymbol.Bullhead => "Tee, fed through its branch",
        DrawnSymbol.Junction => "Junction",
        DrawnSymbol.Reducer => "Reducer",
        DrawnSymbol.Nozzle => "Nozzle",
        DrawnSymbol.Cap => "Cap",
        DrawnSymbol.Bulkhead => "Bulkhead union",
        DrawnSymbol.Union => "Union",
        DrawnSymbol.Elbow => "Elbow",
        DrawnSymbol.Valve => "Valve",
        _ => "Other fitting",
    };
}
