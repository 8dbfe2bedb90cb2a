using System.Globalization;
using System.Runtime.CompilerServices;

namespace FlowCalc.Layouts.Reading;

/// <summary>A fault's sentence, put together only while the log still lists faults, so that a million faults cost no more than counting them.</summary>
[InterpolatedStringHandler]
ref struct FaultMessage
{
    DefaultInterpolatedStringHandler text;

    public FaultMessage(int literalLength, int formattedCount, FaultLog log, out bool isListed)
    {
        isListed = !log.IsFull;
        text = isListed ? new DefaultInterpolatedStringHandler(literalLength, formattedCount, CultureInfo.InvariantCulture) : default;
    }

    public void AppendLiteral(string value) => text.AppendLiteral(value);

    public void AppendFormatted<T>(T value) => text.AppendFormatted(value);

    public void AppendFormatted<T>(T value, string? format) => text.AppendFormatted(value, format);

    public string ToText() => text.ToStringAndClear();
}
