using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Api.Tests.Access;

/// <summary>Keeps every line of a log.</summary>
sealed class EveryLine : ILoggerProvider, ILogger
{
    public ConcurrentBag<string> Lines { get; } = [];

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => true;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter) => Lines.Add(formatter(state, exception) + exception);

    public void Dispose()
    {
    }
}
