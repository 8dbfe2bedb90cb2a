using System.Collections.Concurrent;
using Microsoft.Extensions.Logging;

namespace FlowCalc.Api.Tests.Hosting;

/// <summary>Keeps what a service logs as an error or worse.</summary>
sealed class ErrorLog : ILoggerProvider, ILogger
{
    readonly ConcurrentQueue<string> errors = new();

    public IReadOnlyCollection<string> Errors => errors;

    public ILogger CreateLogger(string categoryName) => this;

    public IDisposable? BeginScope<TState>(TState state)
        where TState : notnull => null;

    public bool IsEnabled(LogLevel logLevel) => logLevel >= LogLevel.Error;

    public void Log<TState>(LogLevel logLevel, EventId eventId, TState state, Exception? exception, Func<TState, Exception?, string> formatter)
    {
        if (IsEnabled(logLevel))
            errors.Enqueue(formatter(state, exception) + exception);
    }

    public void Dispose()
    {
        // Nothing is held open.
    }
}
