using System.Collections;

namespace FlowCalc.Findings.Cures;

/// <summary>Stages of remedies that several findings share: each is made once, when it is first come to.</summary>
sealed class Stages(IEnumerable<IReadOnlyList<Remedy>> source) : IEnumerable<IReadOnlyList<Remedy>>
{
    readonly IEnumerator<IReadOnlyList<Remedy>> rest = source.GetEnumerator();
    readonly List<IReadOnlyList<Remedy>> made = [];

    public IEnumerator<IReadOnlyList<Remedy>> GetEnumerator()
    {
        for (var at = 0; ; at++)
        {
            if (at == made.Count)
            {
                if (!rest.MoveNext()) yield break;
                made.Add(rest.Current);
            }
            yield return made[at];
        }
    }

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();
}
