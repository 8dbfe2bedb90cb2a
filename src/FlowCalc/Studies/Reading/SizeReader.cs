using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Sizing;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads a request for sizes: a layout document, a stock, what is free, a wish and an objective, every fault at once.</summary>
public static class SizeReader
{
    /// <summary>Reads a request.</summary>
    /// <param name="utf8">JSON in UTF-8.</param>
    /// <param name="layouts">Limits on the layout.</param>
    /// <param name="mostOfStock">Most tubes, and most nozzles, of the stock, 1 to 200.</param>
    /// <param name="work">Work after which the search ends; see <see cref="SizingProblem.Work"/>.</param>
    /// <param name="cancellationToken">Ends the reading early.</param>
    /// <returns>The request, or every fault in it.</returns>
    /// <exception cref="JsonException">The text is not JSON in UTF-8, or nested too deep.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The reading was ended early.</exception>
    public static StudyReading<SizeRequest> Read(ReadOnlyMemory<byte> utf8, LayoutReaderOptions layouts, int mostOfStock, int work, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layouts);
        ArgumentOutOfRangeException.ThrowIfLessThan(mostOfStock, 1);
        // A choice is kept in one byte, and what is there already is one more.
        ArgumentOutOfRangeException.ThrowIfGreaterThan(mostOfStock, 200);
        ArgumentOutOfRangeException.ThrowIfLessThan(work, 1);
        return StudyText.Read(utf8, layouts, (context, root) => Request(context, root, layouts, mostOfStock, work), cancellationToken);
    }

    /// <summary>The word of an objective in requests and answers.</summary>
    /// <param name="objective">The objective.</param>
    public static string WordOf(SizingObjective objective) => SizeFields.Objectives.Words[(int)objective];

    static SizeRequest? Request(ReadingContext context, JsonValue root, LayoutReaderOptions layouts, int mostOfStock, int work)
    {
        if (!SizeFields.Request.TryRead(context, root, out var members)) return null;
        TextValue.Read(context, members[SizeField.Note], "a note");
        NestedLayout? given = null;
        if (members.Requires(context, SizeField.Layout, "the layout document to find sizes for"))
            given = NestedLayout.Read(context, members[SizeField.Layout], layouts);
        if (given?.Layout is { } known) context.Ambient = known.AmbientPressure.Pascals;

        var choice = TextValue.Choice(context, members[SizeField.Objective], SizeFields.Objectives);
        if (!members.Has(SizeField.Objective))
        {
            context.Assumptions.Add("/objective", SizeFields.Objectives.Words[0], "common practice, no source");
            choice = 0;
        }
        SizingObjective? objective = choice < 0 ? null : (SizingObjective)choice;
        var stock = members.Requires(context, SizeField.Stock, "tubes, orifices, kFactors or nozzles to choose from")
            ? new StockReader(context, given?.Layout, members[SizeField.Layout], objective, mostOfStock).Read(members[SizeField.Stock])
            : null;
        var wish = WishReader.Read(context, members, given?.Layout, objective);
        if (given?.Layout is not { } layout || stock is null) return null;
        var groups = new FreeReader(context, layout, !stock.Tubes.IsEmpty, !stock.Nozzles.IsEmpty).Read(members, SizeField.Free);
        if (!context.Faults.IsEmpty || wish is null || objective is not { } aim) return null;
        var problem = new SizingProblem { Layout = layout, Tubes = stock.Tubes, Nozzles = stock.Nozzles, Groups = groups, Wish = wish, Objective = aim, Work = work };
        return new(problem, given.Utf8, stock.TubeTexts, stock.NozzleTexts, context.Assumptions.ToArray());
    }
}
