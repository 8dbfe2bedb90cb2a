using FlowCalc.Layouts;

namespace FlowCalc.Findings.Cures;

/// <summary>How much following of discharges cures may cost, counted by the size of what is followed, so that the same layout always has the same trials.</summary>
/// <param name="layout">The layout.</param>
/// <param name="cases">How many cases it has.</param>
sealed class DischargeBudget(Layout layout, int cases)
{
    // In points of a liquid's line followed in one case, some eighth of a millisecond each: some tenths of a second in all.
    const double MostBrief = 3_200;
    const double MostWhole = 6_000;

    // A gas or an agent that boils takes tables of its properties besides.
    const double Tables = 300;
    const double Expanding = 8;

    // The bottle at rest against a case for times and masses alone.
    const double Rest = 0.1;

    // A case with its band and curves against one for times and masses alone.
    const double Whole = 2.5;

    // One without its band against the same.
    const double WithoutBand = 1.2;

    readonly double one = layout.Agent.IsExpanding ? Tables + Expanding * layout.Points.Length : Trials.SizeOf(layout);
    double brief, whole;

    /// <summary>Whether something was refused because enough had been done.</summary>
    public bool IsCutShort { get; private set; }

    /// <summary>Whether one case may be followed briefly, or its bottle looked at before the valve opens; if so, it is counted. Where no change could be followed whole, none is tried.</summary>
    /// <param name="isAtRest">Whether only the bottle is looked at.</param>
    public bool AllowsOne(bool isAtRest) => Allows(ref brief, isAtRest ? Rest * one : one, OfWhole <= MostWhole ? MostBrief : 0);

    /// <summary>Whether all cases may be followed for all that is found in them; if so, they are counted.</summary>
    public bool AllowsWhole() => Allows(ref whole, OfWhole, MostWhole);

    /// <summary>Whether all cases may be followed with their bands besides; if so, they are counted.</summary>
    public bool AllowsBand() => Allows(ref whole, one * Whole * cases, MostWhole);

    double OfWhole => one * (layout.Agent.IsExpanding ? WithoutBand : Whole) * cases;

    bool Allows(ref double spent, double cost, double most)
    {
        IsCutShort |= spent + cost > most;
        if (spent + cost > most) return false;
        spent += cost;
        return true;
    }
}
