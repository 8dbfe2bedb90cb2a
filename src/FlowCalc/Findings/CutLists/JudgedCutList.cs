using System.Collections.Immutable;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using FlowCalc.Quantities;
using FlowCalc.Routes;

namespace FlowCalc.Findings.CutLists;

/// <summary>What the rules of a cut list look at.</summary>
sealed class JudgedCutList(Layout layout, CutList cutList, UnitSystem units, ImmutableArray<Limit> limits, CancellationToken cancellationToken)
    : JudgedLayout(layout, units, limits, cancellationToken)
{
    public CutList CutList { get; } = cutList;

    /// <summary>The runs with what is cut for them.</summary>
    public IEnumerable<(int Index, Run Run, RunCut Cut)> Runs
    {
        get
        {
            for (var index = 0; index < Layout.Runs.Length; index++)
            {
                Pass(index);
                yield return (index, Layout.Runs[index], CutList.Runs[index]);
            }
        }
    }

    /// <summary>A length in a sentence.</summary>
    public string Text(double metres) => Wording.Of(metres, QuantityKind.Length, Units);

    /// <summary>A length that is beyond a bound, with digits enough to show it.</summary>
    public string Text(double metres, double bound) => Wording.Of(metres, bound, QuantityKind.Length, Units);

    /// <summary>A piece as it is named in a sentence.</summary>
    public string Piece(TubePiece piece)
    {
        var run = CutList.Runs[piece.Run];
        var id = Wording.Id(RunId(piece.Run));
        return run.Pieces.Length == 1 ? id : $"piece {Wording.Number(piece.Number)} of {id}";
    }

    /// <summary>Adds what was found of lengths against a limit.</summary>
    public void Add(FindingList findings, string code, List<Hit>? hits, Func<Hit, string> sentence) =>
        findings.Add(code, Limit(code).Source, QuantityKind.Length, "run", hits, sentence);

    /// <summary>The outside diameter of a tube, or its bore where that is all that is known, m.</summary>
    public static double Outside(Tube tube) => (tube.OutsideDiameter ?? tube.Bore).Meters;
}
