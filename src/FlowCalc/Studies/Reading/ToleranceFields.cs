using FlowCalc.Layouts.Reading;
using FlowCalc.Studies.Tolerance;

namespace FlowCalc.Studies.Reading;

/// <summary>The members of a study of tolerances.</summary>
enum ToleranceField
{
    Note,
    Layout,
    Answer,
    Cases,
    Spreads,
    Samples,
    Seed,
}

/// <summary>The ways in which a value may be spread; one of them.</summary>
enum SpreadField
{
    Normal,
    Uniform,
    Triangular,
}

/// <summary>The fields of a study of tolerances; its schema has the same.</summary>
static class ToleranceFields
{
    public static readonly FieldTable<ToleranceField> Study = new("a study of tolerances");
    public static readonly FieldTable<SpreadField> Spread = new("a spread");
    public static readonly Vocabulary Answers = new("flow", "discharge");
    public static readonly Vocabulary Cases = new("first", "all");
    public static readonly Vocabulary Kinds = new([.. Enum.GetValues<SpreadKind>().Select(SpreadWords.Of)]);
}
