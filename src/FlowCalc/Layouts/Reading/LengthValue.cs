using System.Collections.Immutable;
using UnitsNet;

namespace FlowCalc.Layouts.Reading;

/// <summary>Reads lengths that need not be there.</summary>
static class LengthValue
{
    /// <summary>A length in its range; null where it is missing or none.</summary>
    public static Length? Read(ReadingContext context, JsonValue element, SizeRange range)
    {
        var length = QuantityValue.Read(context, element, range);
        return double.IsFinite(length) ? Length.FromMeters(length) : null;
    }

    /// <summary>The lengths of an array that could be read.</summary>
    public static ImmutableArray<Length> ReadAll(ReadingContext context, JsonValue array, SizeRange range)
    {
        var lengths = ImmutableArray.CreateBuilder<Length>(array.GetArrayLength());
        foreach (var entry in array.EnumerateArray())
        {
            context.Pass(lengths.Count);
            if (Read(context, entry, range) is { } length) lengths.Add(length);
        }
        return lengths.DrainToImmutable();
    }
}
