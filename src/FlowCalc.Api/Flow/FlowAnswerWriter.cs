using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Flow;

/// <summary>Writes a flow as JSON. What grows with the layout is written straight, all else by the generated serializer; a test holds both to the same text.</summary>
internal static class FlowAnswerWriter
{
    /// <summary>Writes the answer.</summary>
    public static void Write(JsonText text, FlowAnswer answer)
    {
        text.Write("{\"verdict\":"u8, answer.Verdict);
        text.Raw(",\"findings\":"u8);
        text.Value(answer.Findings, AnswerJson.Default.ImmutableArrayFindingAnswer);
        text.Raw(",\"supply\":"u8);
        text.Value(answer.Supply, AnswerJson.Default.SupplyAnswer);
        text.Raw(",\"zones\":"u8);
        text.Value(answer.Zones, AnswerJson.Default.ImmutableArrayZoneAnswer);
        WriteNozzles(text, answer);
        WriteRuns(text, answer);
        WritePoints(text, answer);
        text.Raw("],\"band\":"u8);
        if (answer.Band is { } band)
            text.Value(band, AnswerJson.Default.FlowBandAnswer);
        else
            text.Raw("null"u8);
        text.Raw(",\"solver\":"u8);
        text.Value(answer.Solver, AnswerJson.Default.SolverAnswer);
        text.Raw(",\"assumptions\":"u8);
        text.Value(answer.Assumptions, AnswerJson.Default.ImmutableArrayAssumption);
        text.Raw(",\"limits\":"u8);
        if (LimitAnswers.AreDefault(answer.Limits))
            text.Raw(SharedText.Of(answer.Limits, AnswerJson.Default.ImmutableArrayLimitAnswer));
        else
            text.Value(answer.Limits, AnswerJson.Default.ImmutableArrayLimitAnswer);
        text.Raw(",\"cautions\":"u8);
        text.Raw(SharedText.Of(answer.Cautions, AnswerJson.Default.ImmutableArrayString));
        text.Raw(",\"engine\":"u8);
        text.Value(answer.Engine, AnswerJson.Default.EngineAnswer);
        if (answer.Explanation is { } explanation)
        {
            text.Raw(",\"explanation\":"u8);
            text.Value(explanation, AnswerJson.Default.FlowExplanationAnswer);
        }
        text.Raw("}"u8);
    }

    static void WriteNozzles(JsonText text, FlowAnswer answer)
    {
        text.Raw(",\"nozzles\":["u8);
        var isFirst = true;
        foreach (ref readonly var nozzle in answer.Nozzles.AsSpan())
        {
            text.Write(isFirst ? "{\"id\":"u8 : ",{\"id\":"u8, nozzle.Id);
            text.Write(",\"zone\":"u8, nozzle.Zone);
            text.Write(",\"pressure\":"u8, nozzle.Pressure);
            text.Write(",\"massFlow\":"u8, nozzle.MassFlow);
            text.Write(",\"volumeFlow\":"u8, nozzle.VolumeFlow);
            text.Write(",\"share\":"u8, nozzle.Share);
            text.Write(",\"wantedShare\":"u8, nozzle.WantedShare);
            text.Write(",\"deviation\":"u8, nozzle.Deviation);
            WriteLosses(text, nozzle.Losses);
            isFirst = false;
        }
    }

    static void WriteRuns(JsonText text, FlowAnswer answer)
    {
        text.Raw("],\"runs\":["u8);
        var isFirst = true;
        foreach (ref readonly var run in answer.Runs.AsSpan())
        {
            text.Write(isFirst ? "{\"id\":"u8 : ",{\"id\":"u8, run.Id);
            text.Write(",\"from\":"u8, run.From);
            text.Write(",\"to\":"u8, run.To);
            text.Write(",\"massFlow\":"u8, run.MassFlow);
            text.Write(",\"velocity\":"u8, run.Velocity);
            text.Write(",\"reynolds\":"u8, run.Reynolds);
            text.Write(",\"regime\":"u8, run.Regime);
            text.Write(",\"pressureIn\":"u8, run.PressureIn);
            text.Write(",\"pressureOut\":"u8, run.PressureOut);
            WriteLosses(text, run.Losses);
            isFirst = false;
        }
    }

    static void WritePoints(JsonText text, FlowAnswer answer)
    {
        text.Raw("],\"points\":["u8);
        var isFirst = true;
        foreach (ref readonly var point in answer.Points.AsSpan())
        {
            text.Write(isFirst ? "{\"id\":"u8 : ",{\"id\":"u8, point.Id);
            text.Write(",\"pressure\":"u8, point.Pressure);
            text.Raw("}"u8);
            isFirst = false;
        }
    }

    static void WriteLosses(JsonText text, in LossesAnswer losses)
    {
        text.Write(",\"losses\":{\"outlet\":"u8, losses.Outlet);
        text.Write(",\"tube\":"u8, losses.Tube);
        text.Write(",\"bends\":"u8, losses.Bends);
        text.Write(",\"tees\":"u8, losses.Tees);
        text.Write(",\"fittings\":"u8, losses.Fittings);
        text.Write(",\"boreChanges\":"u8, losses.BoreChanges);
        text.Write(",\"rise\":"u8, losses.Rise);
        text.Raw("}}"u8);
    }
}
