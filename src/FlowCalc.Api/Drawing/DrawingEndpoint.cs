using System.Text;
using FlowCalc.Api.Answers;
using FlowCalc.Api.Documentation;
using FlowCalc.Api.Faults;
using FlowCalc.Api.Hosting;
using FlowCalc.Api.Requests;
using FlowCalc.Findings;
using FlowCalc.Flows;
using FlowCalc.Layouts;
using FlowCalc.Workbench.Drawings;
using FlowCalc.Workbench.Figures;
using FlowCalc.Workbench.Hosting;
using FlowCalc.Workbench.Pictures;
using FlowCalc.Workbench.Solving;

namespace FlowCalc.Api.Drawing;

/// <summary><c>POST /v1/drawing</c>: a layout drawn and coloured by its steady flow, as SVG.</summary>
internal static class DrawingEndpoint
{
    /// <summary>Names of the query.</summary>
    public const string View = "view", Colour = "colour";

    /// <summary>What is answered.</summary>
    public const string Svg = "image/svg+xml";

    // A browser may open the file by itself: nothing in it runs, loads or is framed.
    const string Policy = "default-src 'none'; sandbox; frame-ancestors 'none'";

    /// <summary>The words that each may have; the first is taken where it is left out.</summary>
    public static readonly string[] Views = ["auto", "isometric", "tree"], Colours = ["flow", "pressure", "share", "none"];

    /// <summary>Puts the call on the service.</summary>
    public static void MapDrawing(this IEndpointRouteBuilder app) =>
        app.MapPost("/v1/drawing", AnswerAsync)
            .WithName("Drawing").WithTags("Flow")
            .WithSummary("Drawing of a layout")
            .DescribeDrawing();

    static Task AnswerAsync(HttpContext context, ServiceLimits limits, StaticMarkup markup)
    {
        Problem? fault = null;
        var view = QueryChoice.Read(context.Request, View, Views, ref fault);
        var colour = (DrawingColour)QueryChoice.Read(context.Request, Colour, Colours, ref fault);
        if (fault is not null) return ProblemWriter.WriteAsync(context, fault);

        var choice = new DrawingChoice { View = view switch { 1 => DrawingView.Isometric, 2 => DrawingView.Tree, _ => null }, Colour = colour };
        return LayoutCall.AnswerAsync<Picture>(context, limits, new LayoutReaderOptions { MaximumPoints = limits.DrawingPoints }, limits.DrawingTime, Draw, MakeAsync, View, Colour);

        Picture? Draw(Layout layout, UnitWriter write, out Problem? why, CancellationToken cancel)
        {
            why = Refusal(layout, choice, limits);
            if (why is not null) return null;
            var shown = new Shown(write.System, layout.AmbientPressure);
            if (colour == DrawingColour.None) return LayoutDrawing.Of(layout, choice, shown, cancel);
            var flow = SteadyFlow.Solve(layout, cancel);
            why = Failure(flow) is { } failure ? Problems.NoAnswer($"{failure} With {Colour}=none the layout is drawn without a flow.") : null;
            return why is null ? LayoutDrawing.Of(new SolvedLayout(layout, write.System, flow, FlowFindings.JudgeWithoutCures(layout, flow, write.System, cancel)), choice, shown, cancel) : null;
        }

        async ValueTask<AnswerText> MakeAsync(Picture picture, CancellationToken cancel)
        {
            var svg = Encoding.UTF8.GetBytes(await markup.SvgAsync(picture, cancel));
            context.Response.Headers.ContentSecurityPolicy = Policy;
            return AnswerWriter.Bytes(context, svg, Svg);
        }
    }

    // A number that is not finite is no result, here as in any other answer.
    static string? Failure(FlowResult flow)
    {
        if (!flow.Report.Converged) return flow.Report.Failure ?? "The solve did not converge.";
        var isFinite = flow.Runs.All(run => double.IsFinite(run.MassFlow.KilogramsPerSecond + run.Velocity.MetersPerSecond + run.PressureOut.Pascals))
            && flow.PointPressures.All(pressure => double.IsFinite(pressure.Pascals)) && double.IsFinite(flow.Supply!.VolumeFlow.CubicMetersPerSecond)
            && flow.Nozzles.All(nozzle => double.IsFinite(nozzle.Share + nozzle.WantedShare + nozzle.Pressure.Pascals));
        return isFinite ? null : "A number of the flow is not finite.";
    }

    static Problem? Refusal(Layout layout, DrawingChoice choice, ServiceLimits limits)
    {
        var parts = 0L;
        foreach (var run in layout.Runs) parts += 1L + run.Fittings.Length + (run.Route?.Corners.Length ?? 0);
        if (parts > limits.DrawingParts) return Problems.TooMuch($"Its runs, corners and fittings are {parts} together; this call takes {limits.DrawingParts}.");
        return choice.View == DrawingView.Isometric && layout.Points.FirstOrDefault(point => point.At is null) is { } placeless
            ? Problems.Query(View, $"isometric needs a place of every point, and \"{Problems.Shortened(placeless.Id)}\" has none; tree needs none.")
            : null;
    }
}
