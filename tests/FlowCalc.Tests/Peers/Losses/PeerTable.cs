using System.Globalization;

namespace FlowCalc.Tests.Peers.Losses;

/// <summary>
/// Tables of loss coefficients computed with the open library fluids, version 1.3.1 (Caleb Bell, MIT licence); the column <c>source</c> names its function and
/// method. They check that a form was written down rightly; they are no measurements.
/// </summary>
internal static class PeerTable
{
    /// <summary>The rows of one table, as the numbers of the named columns in that order.</summary>
    public static IEnumerable<object[]> Read(string table, params string[] columns)
    {
        var name = $"Peers/Losses/{table}.csv";
        using var stream = typeof(PeerTable).Assembly.GetManifestResourceStream(name) ?? throw new InvalidOperationException($"No table {name}.");
        using var reader = new StreamReader(stream);
        var header = reader.ReadLine()!.Split(',');
        Assert.Equal([.. columns, "source"], header);
        var rows = new List<object[]>();
        while (reader.ReadLine() is { } line)
        {
            var fields = line.Split(',');
            Assert.StartsWith("fluids-1.3.1:", fields[^1], StringComparison.Ordinal);
            rows.Add([.. fields[..^1].Select(field => (object)double.Parse(field, CultureInfo.InvariantCulture))]);
        }

        return rows;
    }
}
