using Microsoft.AspNetCore.Components;

namespace FlowCalc.Workbench.Hosting;

/// <summary>Services whose components are made only until they are asked to stop: a renderer knows no such token of its own.</summary>
/// <param name="services">All other services.</param>
/// <param name="cancel">Asked before every component.</param>
internal sealed class StoppingServices(IServiceProvider services, CancellationToken cancel) : IServiceProvider, IComponentActivator
{
    public object? GetService(Type serviceType) => serviceType == typeof(IComponentActivator) ? this : services.GetService(serviceType);

    /// <summary>Makes a component.</summary>
    /// <exception cref="OperationCanceledException">It was asked to stop.</exception>
    public IComponent CreateInstance(Type componentType)
    {
        cancel.ThrowIfCancellationRequested();
        return (IComponent)Activator.CreateInstance(componentType)!;
    }
}
