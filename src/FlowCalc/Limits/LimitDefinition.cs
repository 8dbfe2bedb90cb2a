using FlowCalc.Quantities;

namespace FlowCalc.Limits;

/// <summary>A default limit: the steps of one finding, and whose they are.</summary>
/// <param name="Code">The finding's code; what a document names to state its own limit.</param>
/// <param name="Kind">What is measured; null for a plain number.</param>
/// <param name="Note">Beyond this a note; null for none.</param>
/// <param name="Warn">Beyond this a warning; null for none.</param>
/// <param name="Fail">Beyond this a failure; null for none.</param>
/// <param name="Refuse">Beyond this a discharge is not answered; a steady flow counts it as a failure; null for none.</param>
/// <param name="LowerIsWorse">False where a larger value is worse, true where a smaller one is.</param>
/// <param name="Source">Whose limit it is.</param>
/// <param name="Description">What is measured, in words.</param>
/// <param name="Use">The answers that it is held against.</param>
public sealed record LimitDefinition(
    string Code,
    QuantityKind? Kind,
    Measure? Note,
    Measure? Warn,
    Measure? Fail,
    Measure? Refuse,
    bool LowerIsWorse,
    string Source,
    string Description,
    LimitUse Use = LimitUse.Flow)
{
    /// <summary>The default steps.</summary>
    public Limit Limit { get; } = new(Code, Note, Warn, Fail, Refuse, Source);

    /// <summary>Whether the steps that a limit has follow each other from note to refuse; equal steps are in order.</summary>
    /// <param name="limit">A limit of the same kind; its null steps are passed over.</param>
    /// <returns>True where no step is milder than one before it.</returns>
    public bool IsInOrder(Limit limit)
    {
        ArgumentNullException.ThrowIfNull(limit);
        double? last = null;
        foreach (var step in (ReadOnlySpan<Measure?>)[limit.Note, limit.Warn, limit.Fail, limit.Refuse])
        {
            if (step is not { } reached) continue;
            if (last is { } before && Beyond(before, reached.Si)) return false;
            last = reached.Si;
        }
        return true;
    }

    /// <summary>The limit that holds where a document states its own.</summary>
    /// <param name="stated">The document's limit: the steps that it gives, null for those that it leaves out.</param>
    /// <returns>
    /// The stated steps. A step left out keeps its default, unless it would stand out of order with a stated one: then it is off, as a failure
    /// below the stated warning would make the statement void.
    /// </returns>
    /// <exception cref="ArgumentException">The limit is for another code.</exception>
    public Limit Override(Limit stated)
    {
        ArgumentNullException.ThrowIfNull(stated);
        if (stated.Code != Code) throw new ArgumentException($"A limit for {stated.Code} cannot stand for {Code}.", nameof(stated));

        var kept = Limit with
        {
            Note = stated.Note ?? Milder(Note, stated.Warn, stated.Fail, stated.Refuse),
            Warn = stated.Warn ?? Milder(Harsher(Warn, stated.Note), stated.Fail, stated.Refuse),
            Fail = stated.Fail ?? Milder(Harsher(Fail, stated.Note, stated.Warn), stated.Refuse),
            Refuse = stated.Refuse ?? Harsher(Refuse, stated.Note, stated.Warn, stated.Fail),
        };
        var leftOut = (stated.Note is null && kept.Note is not null) || (stated.Warn is null && kept.Warn is not null)
            || (stated.Fail is null && kept.Fail is not null) || (stated.Refuse is null && kept.Refuse is not null);
        return kept with { Source = leftOut ? $"{DefaultLimits.StatedInTheDocument}; the steps left out: {Source}" : DefaultLimits.StatedInTheDocument };
    }

    bool Beyond(double value, double step) => LowerIsWorse ? value < step : value > step;

    Measure? Milder(Measure? step, params ReadOnlySpan<Measure?> harsher)
    {
        foreach (var other in harsher)
            if (step is { } own && other is { } bound && Beyond(own.Si, bound.Si)) return null;
        return step;
    }

    Measure? Harsher(Measure? step, params ReadOnlySpan<Measure?> milder)
    {
        foreach (var other in milder)
            if (step is { } own && other is { } bound && Beyond(bound.Si, own.Si)) return null;
        return step;
    }
}
