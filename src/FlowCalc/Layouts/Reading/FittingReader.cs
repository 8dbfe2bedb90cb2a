using FlowCalc.Losses;
using FlowCalc.Stock;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of a fitting.</summary>
enum FittingField
{
    Kind,
    LossCoefficient,
    Kv,
    Bore,
    Length,
    Angle,
    Insertion,
    Grip,
    CentreToStop,
    Thread,
    Panel,
    PanelGrip,
    Note,
}

/// <summary>Reads fittings: of the document, of the catalogue, or in place.</summary>
static class FittingReader
{
    const string OneLoss = "a fitting has one of lossCoefficient, kv, and bore with length; an elbow may have bore beside lossCoefficient";
    const string WholeElbow = "kv stands for the whole fitting, its bore with it; an elbow has bore beside lossCoefficient or alone";

    /// <summary>An entry of the document's fittings; null where something is wrong.</summary>
    public static Fitting? Own(ReadingContext context, string name, JsonValue element) => Described(context, name, element);

    /// <summary>A fitting of the catalogue.</summary>
    public static Fitting Of(CatalogueFitting fitting) => new()
    {
        Name = fitting.Id,
        Kind = fitting.Kind,
        LossCoefficient = fitting.LossCoefficient,
        Kv = fitting.Kv is { } kv ? FlowCoefficientLoss.FromCubicMetresPerHour(kv) : null,
        Bore = fitting.Bore,
        Length = fitting.Length,
        Insertion = fitting.Insertion,
    };

    /// <summary>A fitting described in the document; null where something is wrong.</summary>
    public static Fitting? Described(ReadingContext context, string? name, JsonValue element)
    {
        if (!LayoutFields.Fitting.TryRead(context, element, out var members)) return null;
        var before = context.Faults.Count;
        members.Requires(context, FittingField.Kind, "its kind in words, such as union, bulkhead-union, elbow or valve");
        TextValue.Read(context, members[FittingField.Note], "a note");
        var kind = FittingKind.Read(context, members[FittingField.Kind]);
        CheckLosses(context, members, kind);
        var coefficient = NumberValue.Read(context, members[FittingField.LossCoefficient], Sizes.LossCoefficient);
        var kv = QuantityValue.Read(context, members[FittingField.Kv], Sizes.Kv);
        var angle = QuantityValue.Read(context, members[FittingField.Angle], Sizes.ElbowAngle);
        if (kind is not null and not Fitting.Elbow) members.Refuses(context, FittingField.Angle, "only an elbow has an angle");
        var bore = LengthValue.Read(context, members[FittingField.Bore], Sizes.Bore);
        var length = LengthValue.Read(context, members[FittingField.Length], Sizes.FittingLength);
        var insertion = LengthValue.Read(context, members[FittingField.Insertion], Sizes.Insertion);
        var grip = LengthValue.Read(context, members[FittingField.Grip], Sizes.Grip);
        var stop = LengthValue.Read(context, members[FittingField.CentreToStop], Sizes.CentreToStop);
        if (kind is not null and not Fitting.BulkheadUnion)
            foreach (var field in (ReadOnlySpan<FittingField>)[FittingField.Thread, FittingField.Panel, FittingField.PanelGrip])
                members.Refuses(context, field, "only a bulkhead-union goes through a panel");
        var thread = LengthValue.Read(context, members[FittingField.Thread], Sizes.Thread);
        var panel = LengthValue.Read(context, members[FittingField.Panel], Sizes.Panel);
        var panelGrip = LengthValue.Read(context, members[FittingField.PanelGrip], Sizes.Panel);
        if (context.Faults.Count > before || kind is null) return null;
        return new Fitting
        {
            Name = name,
            Kind = kind,
            LossCoefficient = double.IsFinite(coefficient) ? coefficient : null,
            Kv = double.IsFinite(kv) ? kv : null,
            Bore = bore,
            Length = length,
            Angle = double.IsFinite(angle) ? Angle.FromRadians(angle) : kind is Fitting.Elbow ? Angle.FromRadians(Math.PI / 2) : null,
            Insertion = insertion,
            Grip = grip,
            CentreToStop = stop,
            Thread = thread,
            Panel = panel,
            PanelGrip = panelGrip,
        };
    }

    static void CheckLosses(ReadingContext context, in Members<FittingField> members, string? kind)
    {
        if (members.Has(FittingField.LossCoefficient)) members.Refuses(context, FittingField.Kv, OneLoss);
        if (!members.Has(FittingField.Bore)) return;
        members.Requires(context, FittingField.Length, "the length of its bore beside bore");
        var isElbow = kind is Fitting.Elbow or null;
        if (!isElbow) members.Refuses(context, FittingField.LossCoefficient, OneLoss);
        if (!members.Has(FittingField.LossCoefficient)) members.Refuses(context, FittingField.Kv, isElbow ? WholeElbow : OneLoss);
    }
}
