using FlowCalc.Layouts;
using FlowCalc.Layouts.Reading;

namespace FlowCalc.Studies.Reading;

/// <summary>Reads the request of a study: an object that holds a layout document among its members.</summary>
static class StudyText
{
    // A layout stands one or two levels down in a request.
    const int Levels = 8;

    /// <summary>Reads a request.</summary>
    /// <param name="utf8">JSON in UTF-8.</param>
    /// <param name="layouts">Limits on each layout within.</param>
    /// <param name="read">Reads the outermost value; null where it logged faults.</param>
    /// <param name="cancellationToken">Ends the reading early.</param>
    public static StudyReading<TRequest> Read<TRequest>(
        ReadOnlyMemory<byte> utf8, LayoutReaderOptions layouts, Func<ReadingContext, JsonValue, TRequest?> read, CancellationToken cancellationToken)
        where TRequest : class
    {
        var (request, faults) = TextReading.Read(utf8, layouts with { MaximumDepth = layouts.MaximumDepth + Levels }, read, cancellationToken);
        return new StudyReading<TRequest>(request, faults);
    }
}
