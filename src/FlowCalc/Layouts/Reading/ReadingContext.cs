namespace FlowCalc.Layouts.Reading;

/// <summary>What the readers of one document share.</summary>
sealed class ReadingContext(ReadOnlyMemory<byte> utf8, LayoutReaderOptions options, CancellationToken cancellation)
{
    /// <summary>Pressure of the standard atmosphere, Pa (ISO 2533:1975, from memory): the ambient pressure where none is given.</summary>
    public const double StandardAmbient = 101_325;

    /// <summary>The text that is read.</summary>
    public ReadOnlyMemory<byte> Utf8 { get; } = utf8;

    public LayoutReaderOptions Options { get; } = options;

    public CancellationToken Cancellation { get; } = cancellation;

    public FaultLog Faults { get; } = new(utf8, options.MaximumFaults);

    public AssumptionLog Assumptions { get; } = new();

    /// <summary>Ambient pressure, Pa, which every gauge pressure is added to.</summary>
    public double Ambient { get; set; } = StandardAmbient;

    /// <summary>How many more names the messages may be compared with in search of the closest; a document with very many wrong names has its first ones answered.</summary>
    public int ComparisonsLeft { get; set; } = 50_000;

    /// <summary>Lets a long loop be ended; looks at the token once in a thousand passes.</summary>
    public void Pass(int index)
    {
        if ((index & 1023) == 0) Cancellation.ThrowIfCancellationRequested();
    }
}
