using System.Globalization;
using FlowCalc.Quantities;
using UnitsNet;
using UnitSystem = FlowCalc.Quantities.UnitSystem;

namespace FlowCalc.Findings;

/// <summary>Numbers, ids and lists as they stand in the sentences of findings.</summary>
static class Wording
{
    const int Digits = 3;
    const int MoreDigits = 6;
    const int MostIds = 3;
    const int MostIdCharacters = 60;

    public static string Of(double si, QuantityKind kind, UnitSystem units) => QuantityWriter.Text(si, kind, units, Digits);

    public static string Of(Length length, UnitSystem units) => Of(length.Meters, QuantityKind.Length, units);

    /// <summary>An absolute pressure, written as gauge.</summary>
    public static string Gauge(double absolute, JudgedAnswer judged) => Of(absolute - judged.Ambient, QuantityKind.Pressure, judged.Units);

    public static string Number(double value) => value == 0 || Math.Abs(value) is >= 1e-4 and < 1e6
        ? double.Parse(value.ToString("G" + Digits, CultureInfo.InvariantCulture), CultureInfo.InvariantCulture).ToString("0.######", CultureInfo.InvariantCulture)
        : value.ToString("G" + Digits, CultureInfo.InvariantCulture);

    /// <summary>A value that is beyond a bound, with more digits where three would show it equal to the bound.</summary>
    public static string Of(double si, double bound, QuantityKind kind, UnitSystem units)
    {
        var text = Of(si, kind, units);
        return text == Of(bound, kind, units) && si != bound ? QuantityWriter.Text(si, kind, units, MoreDigits) : text;
    }

    /// <summary>A share of the flow, which may be small where there are many nozzles.</summary>
    public static string Share(double part) => $"{Number(part * 100)} %";

    public static string Percent(double part) => string.Create(CultureInfo.InvariantCulture, $"{part * 100:0.#} %");

    /// <summary>A part that is beyond a limit, with a second decimal where the first would show it equal to the limit.</summary>
    public static string Percent(double part, double limit)
    {
        var text = Percent(part);
        return text == Percent(limit) && part != limit ? string.Create(CultureInfo.InvariantCulture, $"{part * 100:0.##} %") : text;
    }

    public static string Signed(double part) => string.Create(CultureInfo.InvariantCulture, $"{part * 100:+0.#;-0.#;0} %");

    public static string Count(int count, string noun) => string.Create(CultureInfo.InvariantCulture, $"{count} {noun}{(count == 1 ? "" : noun.EndsWith('h') ? "es" : "s")}");

    /// <summary>An id as it stands in a sentence; a long one is cut.</summary>
    public static string Id(string id) => id.Length <= MostIdCharacters ? id : string.Concat(id.AsSpan(0, MostIdCharacters), "…");

    /// <summary>Up to three ids, and how many more there are.</summary>
    public static string Ids(IReadOnlyList<string> ids)
    {
        var shown = Math.Min(ids.Count, ids.Count == MostIds + 1 ? MostIds + 1 : MostIds);
        var more = ids.Count - shown;
        var words = new List<string>(shown + 1);
        for (var index = 0; index < shown; index++) words.Add(Id(ids[index]));
        if (more > 0) words.Add(string.Create(CultureInfo.InvariantCulture, $"{more} more"));
        return words.Count == 1 ? words[0] : string.Join(", ", words.Take(words.Count - 1)) + " and " + words[^1];
    }

    /// <summary>A tube by its name and bore.</summary>
    public static string Tube(Layouts.Tube tube, UnitSystem units) =>
        tube.Name is { } name ? $"{Id(name)} ({Of(tube.Bore, units)} bore)" : $"{Of(tube.Bore, units)} bore";
}
