using System.Text;
using System.Text.Json.Nodes;
using FlowCalc.Api.Tests.Flow;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Near-valid and hostile documents, the same ones for the same seed.</summary>
static class HostileDocuments
{
    static readonly JsonNode Demo = JsonNode.Parse(Documents.Demo)!;

    /// <summary>Values that a document may have anywhere, as JSON.</summary>
    public static readonly string[] Values =
    [
        "1e308", "-1e308", "1e309", "5e-324", "-0.0", "0", "-1", "1", "9007199254740993", "123456789012345678901234567890", "1e-30", "true", "false", "null", "[]", "{}", "[[]]", "\"\"", "\" \"",
        "\"1e308 bar\"", "\"NaN bar\"", "\"Infinity m\"", "\"-5 bar\"", "\"0 mm\"", "\"1,5 mm\"", "\"12\"", "\"12 parsec\"", "\"1e-300 mm\"", "\"1e30 km\"", "\"1/0 in\"", "\"1 1/2 in\"", "\"1/4 in\"",
        "\"5 mm mm\"", "\"-273.16 °C\"", "\"1e6 °C\"", "\"½ in\"", "\"10 gpm\"", "\"10 bara\"", "\"1e-5 bara\"", "\"90 °\"", "\"1e9 °\"", "\"5 mm\"", "\"3 kg\"", "\"16 bar\"", "\"1 m\"",
        "{\"value\":1e308,\"unit\":\"bar\"}", "{\"value\":\"1\",\"unit\":\"bar\"}", "{\"value\":1}", "{\"unit\":\"mm\"}", "{\"value\":5,\"unit\":\"mm\",\"x\":1}",
        "\"\\ud800\"", "\"\\udc00\\ud800\"", "\"\\u0000\"", "\"ＴＥＥ\"", "\"\U0001F525\"", "\"\\u202e mm 5\"", "\"a\\/b~c\"", "\"bottle\"", "\"T-rear\"", "\"driver\"", "\"drop\"", "\"branch\"", "\"run\"", "\"tee\"", "\"nozzle\"",
        "[0,0,-1]", "[1e308,1e308,1e308]", "[\"1 m\",\"2 m\",\"3 m\"]", "[\"1e4 m\",\"1 m\"]", "{\"mixture\":\"water-propylene-glycol\",\"massFraction\":0.4}", "{\"density\":\"1e-9 kg/m3\",\"viscosity\":\"1e9 Pa·s\"}",
    ];

    static readonly string[] Names = ["", "id", "kind", "at", "from", "to", "tube", "bore", "length", "rise", "bends", "via", "fittings", "leaves", "share", "zone", "kFactor", "orifice", "unit", "value", "__proto__", "\ud83d\udd25", "a/b~c"];

    /// <summary>The document of a seed.</summary>
    public static byte[] Of(int seed)
    {
        var random = new Random(seed);
        return Spoilt(random, isBottle: false, trees: 5);
    }

    /// <summary>The document of a seed, more often a tree that makes sense and always on a bottle before it is spoilt.</summary>
    public static byte[] OnBottle(int seed)
    {
        var random = new Random(seed);
        return Spoilt(random, isBottle: true, trees: 7);
    }

    /// <summary>The document of a seed with a gas or a liquefied gas, more often a tree that makes sense before it is spoilt.</summary>
    public static byte[] OfGas(int seed) => Spoilt(new Random(seed), isBottle: false, trees: 7, isGas: true);

    /// <summary>The same on a bottle.</summary>
    public static byte[] OfGasBottle(int seed) => Spoilt(new Random(seed), isBottle: true, trees: 7, isGas: true);

    /// <summary>The document of a seed, its trees with a bench of extreme figures.</summary>
    public static byte[] OfBench(int seed)
    {
        var random = new Random(seed);
        if (random.Next(2) == 0) return Spoilt(random, isBottle: false, trees: 5);
        var document = JsonNode.Parse(HostileTree.Of(random, isBottle: false, isGas: false))!;
        HostileBench.Add(random, document);
        return Encoding.UTF8.GetBytes(random.Next(4) == 0 ? Mutated(random, document) : document.ToJsonString());
    }

    /// <summary>The document of a seed, its trees with a test of extreme readings.</summary>
    public static byte[] OfTest(int seed)
    {
        var random = new Random(seed);
        if (random.Next(3) == 0) return OfPart(seed, "measured");
        var document = JsonNode.Parse(HostileTree.Of(random, isBottle: random.Next(4) == 0))!;
        HostileReadings.Add(random, document);
        var text = random.Next(3) == 0 ? Mutated(random, document) : document.ToJsonString();
        return random.Next(12) == 0 ? Broken(random, text) : Encoding.UTF8.GetBytes(text);
    }

    /// <summary>The document of a seed: mostly the demo with all parts, one of them spoilt, else a tree or a test.</summary>
    public static byte[] OfWholeJob(int seed) => (seed % 8) switch
    {
        0 => OnBottle(seed),
        1 => OfTest(seed),
        2 => OfPart(seed, "zones"),
        3 => OfPart(seed, "points"),
        4 => OfPart(seed, "supply"),
        5 => OfPart(seed, "mount"),
        6 => OfPart(seed, "circuit"),
        _ => OfPart(seed, "service"),
    };

    /// <summary>The demo of a seed, spoilt in one of its parts.</summary>
    /// <param name="seed">The seed.</param>
    /// <param name="part">Name of the part, such as <c>circuit</c>.</param>
    public static byte[] OfPart(int seed, string part)
    {
        var random = new Random(seed);
        var document = Demo.DeepClone();
        var raw = new Dictionary<JsonNode, string>(ReferenceEqualityComparer.Instance);
        for (var change = random.Next(4); change > 0; change--) Change(random, document[part]!, raw);
        var text = new StringBuilder();
        Write(random, document, raw, repeats: false, text);
        return random.Next(12) == 0 ? Broken(random, text.ToString()) : Encoding.UTF8.GetBytes(text.ToString());
    }

    static byte[] Spoilt(Random random, bool isBottle, int trees, bool isGas = false)
    {
        var kind = random.Next(10);
        var text = kind < trees ? HostileTree.Of(random, isBottle, isGas)
            : kind < trees + (10 - trees) / 3 ? Mutated(random, JsonNode.Parse(HostileTree.Of(random, isBottle, isGas))!)
            : Mutated(random, Demo.DeepClone());
        return random.Next(12) == 0 ? Broken(random, text) : Encoding.UTF8.GetBytes(text);
    }

    static string Mutated(Random random, JsonNode document)
    {
        var raw = new Dictionary<JsonNode, string>(ReferenceEqualityComparer.Instance);
        for (var change = random.Next(1, random.Next(2, 9)); change > 0; change--)
            Change(random, document, raw);
        var text = new StringBuilder();
        Write(random, document, raw, random.Next(30) == 0, text);
        return text.ToString();
    }

    static void Change(Random random, JsonNode document, Dictionary<JsonNode, string> raw)
    {
        var place = Somewhere(random, document);
        switch (place)
        {
            case JsonObject { Count: > 0 } fields:
                var name = fields.ElementAt(random.Next(fields.Count)).Key;
                switch (random.Next(5))
                {
                    case 0: fields.Remove(name); break;
                    case 1: fields[Names[random.Next(Names.Length)]] = fields[name]?.DeepClone(); break;
                    case 2: fields[name] = Somewhere(random, document).DeepClone(); break;
                    default: fields[name] = Raw(random, raw); break;
                }
                break;
            case JsonArray { Count: > 0 } items:
                var at = random.Next(items.Count);
                switch (random.Next(6))
                {
                    case 0: items.RemoveAt(at); break;
                    case 1: items.Add(items[at]?.DeepClone()); break;
                    case 2: items[at] = items[random.Next(items.Count)]?.DeepClone(); break;
                    case 3 when random.Next(8) == 0:
                        for (var copy = 0; copy < 1_000; copy++)
                            items.Add(items[at]?.DeepClone());
                        break;
                    default: items[at] = Raw(random, raw); break;
                }
                break;
            case JsonObject empty:
                empty["x"] = Raw(random, raw);
                break;
        }
    }

    static JsonNode Somewhere(Random random, JsonNode from)
    {
        var here = from;
        while (random.Next(4) > 0)
        {
            var inner = here switch
            {
                JsonObject fields => [.. fields.Select(field => field.Value).Where(value => value is JsonObject or JsonArray)],
                JsonArray items => (JsonNode?[])[.. items.Where(value => value is JsonObject or JsonArray)],
                _ => [],
            };
            if (inner.Length == 0)
                break;
            here = inner[random.Next(inner.Length)]!;
        }
        return here;
    }

    // Some texts, such as half a surrogate pair, cannot be a node's value; they are put in when the document is written.
    static JsonValue Raw(Random random, Dictionary<JsonNode, string> raw)
    {
        var node = JsonValue.Create("raw");
        raw[node] = random.Next(20) == 0 ? Nested(random.Next(2, 3_000)) : Values[random.Next(Values.Length)];
        return node;
    }

    static string Nested(int depth) => new string('[', depth) + new string(']', depth);

    static void Write(Random random, JsonNode? node, Dictionary<JsonNode, string> raw, bool repeats, StringBuilder text)
    {
        switch (node)
        {
            case null:
                text.Append("null");
                break;
            case JsonObject fields:
                text.Append('{');
                foreach (var (name, value) in fields)
                    for (var times = repeats && random.Next(40) == 0 ? 2 : 1; times > 0; times--)
                    {
                        text.Append(text[^1] == '{' ? "" : ",").Append(JsonValue.Create(name).ToJsonString()).Append(':');
                        Write(random, value, raw, repeats, text);
                    }
                text.Append('}');
                break;
            case JsonArray items:
                text.Append('[');
                foreach (var (at, item) in items.Index())
                {
                    text.Append(at == 0 ? "" : ",");
                    Write(random, item, raw, repeats, text);
                }
                text.Append(']');
                break;
            default:
                text.Append(raw.TryGetValue(node, out var hostile) ? hostile : node.ToJsonString());
                break;
        }
    }

    static byte[] Broken(Random random, string text)
    {
        var bytes = Encoding.UTF8.GetBytes(text);
        switch (random.Next(5))
        {
            case 0: return bytes[..random.Next(bytes.Length)];
            case 1: return [.. bytes, .. "}"u8];
            case 2: return [0xEF, 0xBB, 0xBF, .. bytes];
            case 3: return [];
            default:
                for (var flips = random.Next(1, 6); flips > 0; flips--)
                    bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
                return bytes;
        }
    }
}
