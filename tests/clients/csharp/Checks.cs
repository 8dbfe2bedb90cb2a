namespace FlowCalc.CSharpClient;

/// <summary>Counts what holds and what does not, and says of the latter what was seen.</summary>
sealed class Checks
{
    int passed, failed;

    public void Check(string name, bool holds, object? seen)
    {
        if (holds)
        {
            passed++;
            return;
        }
        failed++;
        Console.WriteLine($"FAIL {name}: {seen}");
    }

    /// <returns>The exit code: 0 where everything held.</returns>
    public int Sum()
    {
        Console.WriteLine($"{passed} passed, {failed} failed");
        return failed > 0 ? 1 : 0;
    }
}
