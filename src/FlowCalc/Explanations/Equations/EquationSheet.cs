using System.Collections.Immutable;

namespace FlowCalc.Explanations;

/// <summary>Every equation that an explanation may use.</summary>
public static class EquationSheet
{
    /// <summary>The equations, in the order in which a reader meets them.</summary>
    public static ImmutableArray<Equation> All { get; } =
    [
        BottleEquations.CushionVolume, BottleEquations.CushionDensity, BottleEquations.RestDensity, BottleEquations.LiquidPart, BottleEquations.GasOverLiquid, BottleEquations.GasPressure, BottleEquations.AgentPressure,
        BottleEquations.BottlePressure, BottleEquations.Head, BottleEquations.VolumeAtUncovering, BottleEquations.Polytropic,
        OutletEquations.FlowOfOne, OutletEquations.Restrictor, OutletEquations.Throttled,
        TubeEquations.Velocity, TubeEquations.ReynoldsNumber, TubeEquations.Laminar, TubeEquations.TurbulentSlope, TubeEquations.Transition, TubeEquations.Turbulent, TubeEquations.TubeFriction,
        BendEquations.HeldReynolds, BendEquations.Turbulent, BendEquations.Dean, BendEquations.CurvedFriction, BendEquations.Laminar, BendEquations.Both,
        TeeEquations.FlowShare, TeeEquations.Run, TeeEquations.Branch, TeeEquations.Bullhead,
        FittingEquations.SharpTurn, FittingEquations.Contraction, FittingEquations.Expansion, FittingEquations.JetRecovery, FittingEquations.ThickOrifice,
        FittingEquations.CoefficientLoss, FittingEquations.FlowCoefficient, TubeEquations.Rise,
        GasEquations.MassFlux, GasEquations.LosslessStep, GasEquations.ChokedEnd, GasEquations.LossOfRun, GasEquations.Weight, GasEquations.RunBalance, GasEquations.Rise,
        GasEquations.LossOfKind, GasEquations.PartOfDrop, GasEquations.WholeDrop,
        PathEquations.DropOfRun, PathEquations.EndPressure, PathEquations.DropOfPath, PathEquations.MassBalance,
        OutletEquations.AreaOfKFactor, OutletEquations.AreaOfOrifice, OutletEquations.NozzleFlow, OutletEquations.DryNozzle,
        GasNozzleEquations.Flow, GasNozzleEquations.Expansion, GasNozzleEquations.DelayedExpansion, GasNozzleEquations.Closed,
        BottleEquations.GasRate, BottleEquations.GasDensityRate, BottleEquations.GasTemperatureRate, BottleEquations.Contents,
        RouteEquations.LegPart, RouteEquations.LegLength, RouteEquations.PlaneNormal, RouteEquations.Turn, RouteEquations.BendRotation, RouteEquations.HalfTurn,
        RouteEquations.BendSetback, RouteEquations.BendArc, RouteEquations.BendGain, RouteEquations.Straight, RouteEquations.Developed,
        PieceEquations.Insertion, PieceEquations.Stop, PieceEquations.HalfLength, PieceEquations.Exact, PieceEquations.Cut, PieceEquations.Sawn,
        PieceEquations.PlaceAlongRun, PieceEquations.Mark, PieceEquations.ArcEnd, PieceEquations.TubeEnd, PieceEquations.Straight,
        ClipEquations.TableSpacing, ClipEquations.LargestSpacing, ClipEquations.UsualSpacing, ClipEquations.Behind, ClipEquations.Before, ClipEquations.Middle,
        ClipEquations.Spans, ClipEquations.Span, ClipEquations.Count, ClipEquations.SleeveLength, ClipEquations.SleeveInside,
        OrderEquations.TotalLength, OrderEquations.Order, OrderEquations.Weight, OrderEquations.Filled, OrderEquations.BarContent, OrderEquations.Offcut,
        OrderEquations.ContentBound, OrderEquations.LongBound, OrderEquations.BinBound, OrderEquations.LeastStock, OrderEquations.SpareBars,
        CompareEquations.PressureDifference, CompareEquations.Difference, CompareEquations.Ratio, CompareEquations.BadnessOver, CompareEquations.BadnessUnder,
        CompareEquations.RankSteps, CompareEquations.Behind,
        SizeEquations.NozzleDeviation, SizeEquations.Largest, SizeEquations.Cost, SizeEquations.MetreMass, SizeEquations.RunMass, SizeEquations.Exchanged, SizeEquations.Sum, SizeEquations.Gap,
        ToleranceEquations.PercentileRank, ToleranceEquations.Percentile, ToleranceEquations.ChancePart, ToleranceEquations.ChanceLow, ToleranceEquations.ChanceHigh,
        ToleranceEquations.WithinBins, ToleranceEquations.Index, ToleranceEquations.IndexError,
    ];
}
