using FlowCalc.Workbench.Pictures;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Web;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Workbench.Hosting;

/// <summary>Renders components to text, for files: an SVG, a printable report.</summary>
/// <param name="services">Services of components.</param>
/// <param name="log">Where the renderer tells of what it does.</param>
public sealed class StaticMarkup(IServiceProvider services, ILoggerFactory log)
{
    /// <summary>A picture as an SVG file, well-formed XML.</summary>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public Task<string> SvgAsync(Picture picture, CancellationToken cancel = default) => RenderAsync<PictureView>(new() { [nameof(PictureView.Picture)] = picture }, cancel);

    /// <summary>A component as HTML.</summary>
    /// <typeparam name="TComponent">The component.</typeparam>
    /// <param name="parameters">Its parameters by name.</param>
    /// <param name="cancel">Asked at every component within it.</param>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public async Task<string> RenderAsync<TComponent>(Dictionary<string, object?> parameters, CancellationToken cancel = default)
        where TComponent : IComponent
    {
        await using var renderer = new HtmlRenderer(new StoppingServices(services, cancel), log);
        return await renderer.Dispatcher.InvokeAsync(async () =>
        {
            var root = await renderer.RenderComponentAsync<TComponent>(ParameterView.FromDictionary(parameters));
            // A renderer takes a stop for an end: what it leaves then is half a tree, in which a component that was not made stands for the root and which has no end when written.
            cancel.ThrowIfCancellationRequested();
            return root.ToHtmlString();
        });
    }
}
