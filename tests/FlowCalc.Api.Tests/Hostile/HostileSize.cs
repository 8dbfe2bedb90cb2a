using System.Globalization;

namespace FlowCalc.Api.Tests.Hostile;

/// <summary>Sizes of hostile documents.</summary>
static class HostileSize
{
    /// <summary>Everyday sizes evenly, wild ones evenly in their exponent.</summary>
    public static string Of(Random random, bool wild, double low, double high, int leastExponent, int mostExponent)
    {
        var value = wild && random.Next(3) == 0
            ? Math.Pow(10, leastExponent + (mostExponent - leastExponent) * random.NextDouble())
            : low + (high - low) * random.NextDouble();
        return value.ToString("R", CultureInfo.InvariantCulture);
    }
}
