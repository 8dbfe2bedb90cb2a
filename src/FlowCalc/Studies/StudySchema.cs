using FlowCalc.Layouts;

namespace FlowCalc.Studies;

/// <summary>The JSON Schema of what studies take, draft 2020-12: one definition a request, in terms of <see cref="LayoutSchema"/>.</summary>
public static class StudySchema
{
    /// <summary>The schema as UTF-8 JSON.</summary>
    public static ReadOnlyMemory<byte> Utf8 { get; } = LayoutSchema.Embedded("studies.schema.json");
}
