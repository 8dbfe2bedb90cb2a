using System.Text.Json;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>Writes a flow as JSON. The lists that grow with the layout are written straight, all else by the generated serializer; a test holds both to the same text.</summary>
internal static class FlowAnswerWriter
{
    /// <summary>Writes the answer.</summary>
    public static void Write(Utf8JsonWriter writer, FlowAnswer answer)
    {
        writer.WriteStartObject();
        writer.WriteString("verdict"u8, answer.Verdict);
        writer.WritePropertyName("findings"u8);
        JsonSerializer.Serialize(writer, answer.Findings, AnswerJson.Default.ImmutableArrayFindingAnswer);
        writer.WritePropertyName("supply"u8);
        JsonSerializer.Serialize(writer, answer.Supply, AnswerJson.Default.SupplyAnswer);
        writer.WritePropertyName("zones"u8);
        JsonSerializer.Serialize(writer, answer.Zones, AnswerJson.Default.ImmutableArrayZoneAnswer);
        WriteNozzles(writer, answer);
        WriteRuns(writer, answer);
        WritePoints(writer, answer);
        writer.WritePropertyName("solver"u8);
        JsonSerializer.Serialize(writer, answer.Solver, AnswerJson.Default.SolverAnswer);
        writer.WritePropertyName("assumptions"u8);
        JsonSerializer.Serialize(writer, answer.Assumptions, AnswerJson.Default.ImmutableArrayAssumption);
        WriteLimits(writer, answer);
        writer.WritePropertyName("cautions"u8);
        JsonSerializer.Serialize(writer, answer.Cautions, AnswerJson.Default.ImmutableArrayString);
        writer.WritePropertyName("engine"u8);
        JsonSerializer.Serialize(writer, answer.Engine, AnswerJson.Default.EngineAnswer);
        writer.WriteEndObject();
    }

    static void WriteNozzles(Utf8JsonWriter writer, FlowAnswer answer)
    {
        writer.WriteStartArray("nozzles"u8);
        foreach (ref readonly var nozzle in answer.Nozzles.AsSpan())
        {
            writer.WriteStartObject();
            writer.WriteString("id"u8, nozzle.Id);
            writer.WriteString("zone"u8, nozzle.Zone);
            Write(writer, "pressure"u8, nozzle.Pressure);
            Write(writer, "massFlow"u8, nozzle.MassFlow);
            Write(writer, "volumeFlow"u8, nozzle.VolumeFlow);
            writer.WriteNumber("share"u8, nozzle.Share);
            writer.WriteNumber("wantedShare"u8, nozzle.WantedShare);
            if (nozzle.Deviation is { } deviation)
                writer.WriteNumber("deviation"u8, deviation);
            else
                writer.WriteNull("deviation"u8);
            Write(writer, nozzle.Losses);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    static void WriteRuns(Utf8JsonWriter writer, FlowAnswer answer)
    {
        writer.WriteStartArray("runs"u8);
        foreach (ref readonly var run in answer.Runs.AsSpan())
        {
            writer.WriteStartObject();
            writer.WriteString("id"u8, run.Id);
            writer.WriteString("from"u8, run.From);
            writer.WriteString("to"u8, run.To);
            Write(writer, "massFlow"u8, run.MassFlow);
            Write(writer, "velocity"u8, run.Velocity);
            writer.WriteNumber("reynolds"u8, run.Reynolds);
            writer.WriteString("regime"u8, run.Regime);
            Write(writer, "pressureIn"u8, run.PressureIn);
            Write(writer, "pressureOut"u8, run.PressureOut);
            Write(writer, run.Losses);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    static void WritePoints(Utf8JsonWriter writer, FlowAnswer answer)
    {
        writer.WriteStartArray("points"u8);
        foreach (ref readonly var point in answer.Points.AsSpan())
        {
            writer.WriteStartObject();
            writer.WriteString("id"u8, point.Id);
            Write(writer, "pressure"u8, point.Pressure);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    static void WriteLimits(Utf8JsonWriter writer, FlowAnswer answer)
    {
        writer.WriteStartArray("limits"u8);
        foreach (var limit in answer.Limits)
        {
            writer.WriteStartObject();
            writer.WriteString("code"u8, limit.Code);
            Write(writer, "note"u8, limit.Note);
            Write(writer, "warn"u8, limit.Warn);
            Write(writer, "fail"u8, limit.Fail);
            Write(writer, "refuse"u8, limit.Refuse);
            writer.WriteString("source"u8, limit.Source);
            writer.WriteEndObject();
        }
        writer.WriteEndArray();
    }

    static void Write(Utf8JsonWriter writer, ReadOnlySpan<byte> name, in Quantity? quantity)
    {
        if (quantity is { } known)
            Write(writer, name, known);
        else
            writer.WriteNull(name);
    }

    static void Write(Utf8JsonWriter writer, ReadOnlySpan<byte> name, in Quantity quantity)
    {
        Span<byte> text = stackalloc byte[QuantityText.MostBytes];
        writer.WritePropertyName(name);
        writer.WriteRawValue(text[..QuantityText.Write(quantity, text)], skipInputValidation: true);
    }

    static void Write(Utf8JsonWriter writer, in LossesAnswer losses)
    {
        Span<byte> text = stackalloc byte[7 * (QuantityText.MostBytes + 16)];
        var at = Part("{\"outlet\":"u8, losses.Outlet, text);
        at += Part(",\"tube\":"u8, losses.Tube, text[at..]);
        at += Part(",\"bends\":"u8, losses.Bends, text[at..]);
        at += Part(",\"tees\":"u8, losses.Tees, text[at..]);
        at += Part(",\"fittings\":"u8, losses.Fittings, text[at..]);
        at += Part(",\"boreChanges\":"u8, losses.BoreChanges, text[at..]);
        at += Part(",\"rise\":"u8, losses.Rise, text[at..]);
        text[at++] = (byte)'}';
        writer.WritePropertyName("losses"u8);
        writer.WriteRawValue(text[..at], skipInputValidation: true);
    }

    static int Part(ReadOnlySpan<byte> name, in Quantity quantity, Span<byte> text)
    {
        var at = QuantityText.Copy(name, text);
        return at + QuantityText.Write(quantity, text[at..]);
    }
}
