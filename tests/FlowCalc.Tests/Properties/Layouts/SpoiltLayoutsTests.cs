using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using CsCheck;
using FlowCalc.Layouts;
using FlowCalc.Tests.Layouts;

namespace FlowCalc.Tests.Properties.Layouts;

/// <summary>Sound documents spoilt in one or two values: the reader answers with faults or with a layout whose every number is in its range.</summary>
public class SpoiltLayoutsTests
{
    static readonly string[] Spoilers =
    [
        "null", "true", "0", "-1", "1e308", "-1e308", "1e-320", "0.5", "2", "\"\"", "\"0 mm\"", "\"-0 m\"", "\"1e300 m\"", "\"1e-300 mm\"", "\"1e5 bar\"", "\"NaN bar\"", "\"1 bara\"", "\"-1 bar\"",
        "\"0.001 mm\"", "\"1 m\"", "\"10000 m\"", "\"-10000 m\"", "\"180 °\"", "\"1e-9 rad\"", "\"100 °C\"", "\"1000 bara\"", "\"1000000 kg\"", "\"p0\"", "\"p1\"", "\"p2\"", "\"tee\"", "\"nozzle\"", "\"supply\"",
        "\"run\"", "\"branch\"", "\"thin\"", "[]", "{}", "[[[[]]]]", "[1, 2, 3]", "[\"1 m\", \"1 m\", \"1 m\"]", "{ \"value\": 1e400, \"unit\": \"m\" }", "{ \"value\": 1, \"unit\": \"m\" }", "\"\\uD834\\uDD1E\"",
    ];

    static readonly Gen<string> Spoilt = Gen.Select(
        GeneratedLayout.Of(15), Gen.Int[0, 100_000], Gen.Int[0, Spoilers.Length - 1], Gen.Int[0, 100_000], Gen.Int[-Spoilers.Length, Spoilers.Length - 1], Gen.Bool,
        (generated, first, with, second, then, isRemoval) =>
        {
            var root = JsonNode.Parse(generated.Json)!;
            Spoil(root, first, isRemoval ? null : Spoilers[with]);
            if (then >= 0) Spoil(root, second, Spoilers[then]);
            return root.ToJsonString();
        });

    [Fact]
    public void A_spoilt_document_gives_faults_or_a_layout_with_every_number_in_range()
    {
        var (refused, read) = (0, 0);

        Spoilt.Sample(
            json =>
            {
                var reading = LayoutReader.Read(Encoding.UTF8.GetBytes(json));
                if (reading.Layout is null) Interlocked.Increment(ref refused);
                else Interlocked.Increment(ref read);
                return reading.Layout is { } layout ? reading.Faults.IsEmpty && IsInRange(layout) : reading.Faults.All(fault => IsThere(json, fault.Pointer));
            },
            iter: GeneratedLayout.Count);

        // Were one of the two rare, the law would say little of it.
        Assert.True(refused > 1_000 && read > 500, $"{refused} refused, {read} read");
    }

    static void Spoil(JsonNode root, int which, string? value)
    {
        List<JsonNode> nodes = [];
        Collect(root, nodes);
        var node = nodes[which % nodes.Count];
        if (node.Parent is JsonObject owner)
        {
            var name = node.GetPropertyName();
            owner.Remove(name);
            if (value is not null) owner[name] = JsonNode.Parse(value);
        }
        else if (node.Parent is JsonArray list)
        {
            var index = node.GetElementIndex();
            list.RemoveAt(index);
            if (value is not null) list.Insert(index, JsonNode.Parse(value));
        }
    }

    static void Collect(JsonNode? node, List<JsonNode> into)
    {
        if (node is null) return;
        if (node.Parent is not null) into.Add(node);
        if (node is JsonObject owner)
            foreach (var (_, member) in owner) Collect(member, into);
        else if (node is JsonArray list)
            foreach (var entry in list) Collect(entry, into);
    }

    // A pointer leads to a value, or to a member that an object lacks.
    static bool IsThere(string json, string pointer)
    {
        using var document = JsonDocument.Parse(json);
        var at = document.RootElement;
        var segments = pointer.Split('/')[1..];
        for (var i = 0; i < segments.Length; i++)
        {
            var name = segments[i].Replace("~1", "/", StringComparison.Ordinal).Replace("~0", "~", StringComparison.Ordinal);
            if (at.ValueKind is JsonValueKind.Array && int.TryParse(name, CultureInfo.InvariantCulture, out var index) && index < at.GetArrayLength()) at = at[index];
            else if (at.ValueKind is JsonValueKind.Object && at.TryGetProperty(name, out var member)) at = member;
            else return at.ValueKind is JsonValueKind.Object && i == segments.Length - 1;
        }
        return true;
    }

    static bool IsInRange(Layout layout) =>
        layout.Agent is FlowCalc.Agents.LiquidAgent agent && agent.Density(layout.Temperature.Kelvins) is > 0 and < 1e5
        && layout.Points.OfType<Nozzle>().Any()
        && layout.Points.OfType<Nozzle>().All(nozzle => nozzle.KFactor is > 0 and < 1e3 && nozzle.Share is null or (> 0 and <= 1))
        && layout.Runs.All(IsInRange)
        && layout.Supply switch
        {
            HeldSupply held => held.Pressure > layout.AmbientPressure && held.Pressure.Bars <= 1_000,
            BottleSupply { Bottle: var bottle } => bottle.ChargePressure > layout.AmbientPressure && bottle.Fill.Kilograms / agent.Density(bottle.ChargeTemperature.Kelvins) < bottle.Volume.CubicMeters,
            _ => false,
        };

    static bool IsInRange(Run run)
    {
        var arcs = run.Bends.Sum(bend => bend.Angle.Radians * bend.Radius.Meters * bend.Count);
        return run.Tube.Bore.Meters is >= 1e-6 and <= 1
            && run.Tube.Roughness.Meters >= 0 && run.Tube.Roughness.Meters <= 0.05 * run.Tube.Bore.Meters
            && run.Length.Meters is >= 0 and <= 10_000
            // Where bends overlap, the length is less than the way is; a finding says so.
            && (run.Route?.Straights.Any(straight => straight.Meters < 0) is true || Math.Abs(run.Rise.Meters) <= run.Length.Meters * (1 + 1e-9))
            && arcs <= run.Length.Meters * (1 + 1e-9)
            && run.Bends.All(bend => bend.Angle.Radians is > 0 and <= Math.PI && bend.Radius.Meters >= run.Tube.Bore.Meters / 2)
            && run.Fittings.All(fitting => fitting.At is null || fitting.At.Value.Meters <= run.Length.Meters * (1 + 1e-9))
            && run.LossCoefficient is >= 0 and <= 1e9;
    }
}
