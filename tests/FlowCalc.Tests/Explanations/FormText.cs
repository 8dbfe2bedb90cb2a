using System.Globalization;
using System.Text.RegularExpressions;

namespace FlowCalc.Tests.Explanations;

/// <summary>Reads the text of an equation as a formula: what an engineer does with a calculator.</summary>
internal sealed partial class FormText
{
    readonly IReadOnlyDictionary<string, double> values;
    readonly Dictionary<string, string> definitions;
    string text = "";
    int at;

    FormText(IReadOnlyDictionary<string, double> values, Dictionary<string, string> definitions) => (this.values, this.definitions) = (values, definitions);

    /// <summary>Both sides of an equation such as <c>a = b·s, with s = sin(c)</c>.</summary>
    public static (double Left, double Right) Sides(string form, IReadOnlyDictionary<string, double> values)
    {
        var parts = form.Split(", with ");
        Dictionary<string, string> definitions = [];
        if (parts.Length > 1)
            foreach (var definition in Definition().Split(parts[1]))
                definitions[definition.Split(" = ")[0]] = definition.Split(" = ")[1];
        var sides = parts[0].Split(" = ");
        return (new FormText(values, definitions).Whole(sides[0]), new FormText(values, definitions).Whole(sides[1]));
    }

    double Whole(string expression)
    {
        var (outer, place) = (text, at);
        (text, at) = (expression, 0);
        var value = Sum();
        if (at < text.Length) throw new FormatException($"\"{text}\" at {at}");
        (text, at) = (outer, place);
        return value;
    }

    double Sum()
    {
        var value = Product();
        while (Take('+') is var plus && (plus || Take('-')))
            value = plus ? value + Product() : value - Product();
        return value;
    }

    double Product()
    {
        if (Take('-')) return -Product();
        var value = Power();
        while (Take('·') is var times && (times || Take('/')))
            value = times ? value * Power() : value / Power();
        return value;
    }

    double Power()
    {
        var value = Single();
        if (Take('²')) return value * value;
        if (Take('³')) return value * value * value;
        return Take('^') ? Math.Pow(value, Single()) : value;
    }

    double Single()
    {
        if (Take('(')) return Closed(')');
        if (Take('|')) return Math.Abs(Closed('|'));
        if (Take('√')) return Math.Sqrt(Single());
        SkipSpace();
        var word = Word().Match(text, at);
        if (!word.Success) throw new FormatException($"\"{text}\" at {at}");
        at += word.Length;
        return word.Value switch
        {
            "π" => Math.PI,
            "sin" => Math.Sin(Single()),
            "exp" => Math.Exp(Single()),
            "ln" => Math.Log(Single()),
            "log10" => Math.Log10(Single()),
            "tan" => Math.Tan(Single()),
            "ceil" => Math.Ceiling(Single()),
            "round" => Math.Round(Single()),
            "atan2" => Pair(Math.Atan2),
            "min" => Pair(Math.Min),
            "max" => Pair(Math.Max),
            _ => Named(word.Value),
        };
    }

    double Named(string word) =>
        values.TryGetValue(word, out var known) ? known : definitions.TryGetValue(word, out var definition) ? Whole(definition) : double.Parse(word, NumberStyles.Float, CultureInfo.InvariantCulture);

    double Pair(Func<double, double, double> of)
    {
        Require('(');
        var first = Sum();
        Require(',');
        return of(first, Closed(')'));
    }

    double Closed(char end)
    {
        var value = Sum();
        Require(end);
        return value;
    }

    void Require(char sign)
    {
        if (!Take(sign)) throw new FormatException($"\"{text}\" at {at}: {sign}");
    }

    void SkipSpace()
    {
        while (at < text.Length && text[at] == ' ') at++;
    }

    bool Take(char sign)
    {
        SkipSpace();
        if (at >= text.Length || text[at] != sign) return false;
        at++;
        return true;
    }

    [GeneratedRegex(@"\G([0-9.]+(e-?[0-9]+)?|[\p{L}_][\p{L}0-9_']*)")]
    private static partial Regex Word();

    [GeneratedRegex(@", (?=[\p{L}0-9_']+ = )")]
    private static partial Regex Definition();
}
