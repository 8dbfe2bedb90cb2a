using FlowCalc.Discharge;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Sizing;
using UnitsNet;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads what is wished of a choice.</summary>
static class WishReader
{
    const string NeedsBottle = "a time needs a bottle; this layout's supply is held at a pressure and has no end";

    static readonly NumberRange Deviation = new("a deviation", 0, 1, "over 0 to 1, as a part of the wanted share", IsOpen: true);

    /// <summary>The wish; null where something is wrong.</summary>
    public static SizingWish? Read(ReadingContext context, in Members<SizeField> request, Layout? layout, SizingObjective? objective)
    {
        var isHeld = layout?.Supply is HeldSupply;
        if (isHeld && objective == SizingObjective.ShortestTime) context.Faults.Add(request[SizeField.Objective], $"read {Said.Value(request[SizeField.Objective])}: {NeedsBottle}");
        if (objective is SizingObjective.ShortestTime) Assume(context, layout);
        var isNeeded = objective is not (SizingObjective.BestBalance or SizingObjective.ShortestTime);
        if (!request.Has(SizeField.Wish))
        {
            if (isNeeded) request.Requires(context, SizeField.Wish, Right);
            return new SizingWish();
        }
        if (!SizeFields.Wish.TryRead(context, request[SizeField.Wish], out var members)) return null;
        TextValue.Read(context, members[WishField.Note], "a note");
        if (isNeeded && !members.Has(WishField.Deviation) && !members.Has(WishField.Within) && !members.Has(WishField.LeastPressure))
            context.Faults.Add(request[SizeField.Wish], $"read a wish without any of them: {Right}");
        var deviation = NumberValue.Read(context, members[WishField.Deviation], Deviation);
        var times = RequirementReader.Times(context, members[WishField.Within]);
        if (members.Has(WishField.Within) && isHeld) members.Refuses(context, WishField.Within, NeedsBottle);
        if (members.Has(WishField.Within) && objective is not SizingObjective.ShortestTime) Assume(context, layout);
        var least = PressureValue.ReadOverAmbient(context, members[WishField.LeastPressure], "a least pressure");
        return new SizingWish
        {
            Deviation = double.IsFinite(deviation) ? deviation : null,
            Earliest = times is { Earliest: > 0 and var earliest } ? Duration.FromSeconds(earliest) : null,
            Latest = times is { Latest: var latest } ? Duration.FromSeconds(latest) : null,
            LeastPressure = double.IsFinite(least) ? Pressure.FromPascals(least) : null,
        };
    }

    const string Right = "at least one of deviation, within and leastPressure, such as { \"deviation\": 0.1 }";

    // The time is that of the requirement's part in the slowest case.
    static void Assume(ReadingContext context, Layout? layout)
    {
        if (layout is null) return;
        var requirement = ApplicationRequirement.For(layout);
        if (layout.Requirement is null)
            context.Assumptions.Add(
                "/wish/within", FormattableString.Invariant($"the time of {100 * (requirement?.Part ?? LayoutDischarge.UsualPart):0.##} % of the contents"),
                requirement is null ? "common practice, no source" : ApplicationRequirement.SourceOf(layout.Application, layout.Agent) ?? "common practice, no source");
        context.Assumptions.Add("/wish/within", "kept in every case of the document: the earliest and the latest of them count", "the discharge of the chosen sizes, followed in each case");
    }
}
