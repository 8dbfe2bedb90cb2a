using System.Collections.Immutable;
using System.Text.Json;
using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads the request of a study of tolerances: a layout document and how far what is in it may be off, every fault at once.</summary>
public static class ToleranceReader
{
    const double MostSeed = 9_007_199_254_740_991;

    static readonly NumberRange Seed = new("a seed", 0, MostSeed, "a whole number, 0 to 9007199254740991");

    /// <summary>Reads a request.</summary>
    /// <param name="utf8">JSON in UTF-8.</param>
    /// <param name="layouts">Limits on the layout.</param>
    /// <param name="limits">Limits on the study.</param>
    /// <param name="cancellationToken">Ends the reading early.</param>
    /// <returns>The question, or every fault in it.</returns>
    /// <exception cref="JsonException">The text is not JSON in UTF-8, or nested too deep.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A limit is outside its range.</exception>
    /// <exception cref="OperationCanceledException">The reading was ended early.</exception>
    public static StudyReading<ToleranceQuestion> Read(ReadOnlyMemory<byte> utf8, LayoutReaderOptions layouts, ToleranceLimits limits, CancellationToken cancellationToken)
    {
        ArgumentNullException.ThrowIfNull(layouts);
        ArgumentNullException.ThrowIfNull(limits);
        return StudyText.Read(utf8, layouts, (context, root) => Question(context, root, layouts, limits), cancellationToken);
    }

    static ToleranceQuestion? Question(ReadingContext context, JsonValue root, LayoutReaderOptions layouts, ToleranceLimits limits)
    {
        if (!ToleranceFields.Study.TryRead(context, root, out var members)) return null;
        TextValue.Read(context, members[ToleranceField.Note], "a note");
        var answer = (StudiedAnswer)Math.Max(0, TextValue.Choice(context, members[ToleranceField.Answer], ToleranceFields.Answers));
        var cases = TextValue.Choice(context, members[ToleranceField.Cases], ToleranceFields.Cases);
        if (answer == StudiedAnswer.Flow) members.Refuses(context, ToleranceField.Cases, "a steady flow has no cases; answer discharge has");
        var most = answer == StudiedAnswer.Flow ? limits.FlowSamples : limits.DischargeSamples;
        var samples = Whole(context, members[ToleranceField.Samples], SamplesUpTo(most), ToleranceQuestion.UsualSamples);
        var seed = Whole(context, members[ToleranceField.Seed], Seed, ToleranceQuestion.UsualSeed);
        Layout? layout = null;
        if (members.Requires(context, ToleranceField.Layout, "the layout document whose values are spread"))
            layout = NestedLayout.Read(context, members[ToleranceField.Layout], layouts with { NeedsBottle = answer == StudiedAnswer.Discharge }).Layout;
        var things = layout is null ? [] : SpreadThings.Of(layout, answer);
        var spreads = members.Has(ToleranceField.Spreads) ? new SpreadReader(layout, things).Read(context, members[ToleranceField.Spreads]) : [];
        if (!context.Faults.IsEmpty) return null;

        var (variables, assumptions) = members.Has(ToleranceField.Spreads) ? (spreads, ImmutableArray<Assumption>.Empty) : DefaultSpreads.Of(things);
        if (!members.Has(ToleranceField.Samples)) assumptions = assumptions.Add(new("/samples", FormattableString.Invariant($"{samples:0}"), "enough for percentiles to about a tenth of the standard deviation"));
        if (!members.Has(ToleranceField.Seed)) assumptions = assumptions.Add(new("/seed", FormattableString.Invariant($"{seed:0}"), "any other gives another draw"));
        if (answer == StudiedAnswer.Discharge && cases < 0) assumptions = assumptions.Add(new("/cases", "first", "the first temperature in the first attitude; all follows every case, at so many times the work"));
        var question = new ToleranceQuestion
        {
            Layout = layout!,
            Variables = variables,
            Answer = answer,
            IsEveryCase = cases == 1,
            Samples = (int)samples,
            Seed = (ulong)seed,
            Assumptions = assumptions,
        };
        return IsWithin(context, members, question, limits.Numbers) ? question : null;
    }

    static NumberRange SamplesUpTo(int most) => new("a number of samples", ToleranceQuestion.LeastSamples, most, FormattableString.Invariant($"a whole number, {ToleranceQuestion.LeastSamples} to {most}"));

    static double Whole(ReadingContext context, JsonValue element, NumberRange range, double absent)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return absent;
        var number = NumberValue.Read(context, element, range);
        if (double.IsNaN(number) || double.IsInteger(number)) return number;
        context.Faults.Add(element, $"read {Said.Value(element)}: {range.What} is {range.Words}");
        return double.NaN;
    }

    static bool IsWithin(ReadingContext context, in Members<ToleranceField> members, ToleranceQuestion question, long most)
    {
        var numbers = ToleranceStudy.Numbers(question);
        if (numbers <= most) return true;
        var figures = numbers / question.Samples;
        context.Faults.Add(members.Owner, ToleranceFields.Study.Name(ToleranceField.Samples),
            $"took {question.Samples}: every sample of this layout has {figures} figures, nozzle by nozzle and case by case, so that at most {most / figures} samples are kept; fewer samples, or fewer cases, are right");
        return false;
    }
}
