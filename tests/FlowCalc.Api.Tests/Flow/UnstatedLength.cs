namespace FlowCalc.Api.Tests.Flow;

/// <summary>A body whose length is not told beforehand.</summary>
sealed class UnstatedLength(byte[] bytes) : MemoryStream(bytes)
{
    public override bool CanSeek => false;
}
