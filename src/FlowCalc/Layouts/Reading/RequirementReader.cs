using System.Text.Json;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>The members of the requirement.</summary>
enum RequirementField
{
    Part,
    Of,
    Quantity,
    Within,
    Note,
}

/// <summary>Reads what the discharge has to do.</summary>
static class RequirementReader
{
    public static readonly Vocabulary Wholes = new("contents", "quantity");

    /// <summary>The requirement; null where it is missing or wrong.</summary>
    public static Requirement? Read(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined || !LayoutFields.Requirement.TryRead(context, element, out var members)) return null;
        members.Requires(context, RequirementField.Part, Sizes.Part);
        members.Requires(context, RequirementField.Of, "contents or quantity: what the part is of");
        members.Requires(context, RequirementField.Within, "the shortest and the longest time, [\"0 s\", \"30 s\"]");
        TextValue.Read(context, members[RequirementField.Note], "a note");
        var part = NumberValue.Read(context, members[RequirementField.Part], Sizes.Part);
        var whole = TextValue.Choice(context, members[RequirementField.Of], Wholes);
        if (whole == 0) members.Refuses(context, RequirementField.Quantity, "the requirement is a part of the contents; quantity belongs to a part of a quantity");
        if (whole == 1) members.Requires(context, RequirementField.Quantity, Sizes.FillMass);
        var quantity = QuantityValue.Read(context, members[RequirementField.Quantity], Sizes.FillMass);
        if (Times(context, members[RequirementField.Within]) is not var (earliest, latest)) return null;
        return new Requirement(
            part, whole == 0, double.IsFinite(quantity) ? Mass.FromKilograms(quantity) : null,
            earliest > 0 ? Duration.FromSeconds(earliest) : null, Duration.FromSeconds(latest));
    }

    /// <summary>The shortest and the longest time, s; null where they are missing or wrong.</summary>
    public static (double Earliest, double Latest)? Times(ReadingContext context, JsonValue element)
    {
        if (element.ValueKind is JsonValueKind.Undefined) return null;
        if (element.ValueKind is not JsonValueKind.Array || element.GetArrayLength() != 2)
        {
            context.Faults.Add(element, $"read {Said.Value(element)}: within is the shortest and the longest time, [\"0 s\", \"30 s\"]");
            return null;
        }
        var earliest = QuantityValue.Read(context, element[0], Sizes.Within);
        var latest = QuantityValue.Read(context, element[1], Sizes.Within);
        if (earliest >= latest) context.Faults.Add(element, $"read {QuantityValue.Shown(element[0])} to {QuantityValue.Shown(element[1])}: the shortest time comes first and is below the longest");
        return double.IsFinite(earliest + latest) ? (earliest, latest) : null;
    }
}
