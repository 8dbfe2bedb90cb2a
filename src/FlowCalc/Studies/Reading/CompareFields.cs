using FlowCalc.Layouts.Reading;

namespace FlowCalc.Studies.Reading;

/// <summary>The members of a comparison.</summary>
enum CompareField
{
    Name,
    Note,
    Layout,
    Variants,
}

/// <summary>The members of a variant.</summary>
enum VariantField
{
    Name,
    Note,
    Set,
    Layout,
}

/// <summary>The fields of a comparison; its schema has the same.</summary>
static class CompareFields
{
    public static readonly FieldTable<CompareField> Comparison = new("a comparison");
    public static readonly FieldTable<VariantField> Variant = new("a variant");
}
