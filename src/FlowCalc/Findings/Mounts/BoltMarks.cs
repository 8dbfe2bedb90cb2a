using FlowCalc.Limits;
using FlowCalc.Mounts;
using FlowCalc.Stock;

namespace FlowCalc.Findings.Mounts;

/// <summary>Classes of bolts that are weak or not known, and spacers that bend them.</summary>
static class BoltMarks
{
    // The least that is usual in a bracket: 800 MPa, class 8.8.
    static readonly BoltClass Usual = BoltCatalogue.FindClass("8.8")!;

    public static void Find(JudgedMount judged, FindingList findings)
    {
        foreach (var (part, bolts) in judged.Groups)
        {
            var where = PartNames.Of(part, 0);
            if (bolts.Class is null)
                findings.Add(new Finding(MountCodes.BoltGradeUnknown, Severity.Warn, [where],
                    $"The {JudgedMount.Name(part, bolts)} may be of any strength: {BoltCatalogue.Weakest.Id} is taken, the weakest; read the mark on the heads.", null, null, DefaultLimits.CommonPractice, null), JudgedMount.Item(part));
            else if (bolts.Class.Tensile < Usual.Tensile)
                findings.Add(new Finding(MountCodes.BoltGradeLow, Severity.Warn, [where],
                    $"The {JudgedMount.Name(part, bolts)} have a tensile strength of {bolts.Class.Tensile.Megapascals:0} MPa; {Usual.Id} with {Usual.Tensile.Megapascals:0} MPa is the least that is usual.", null, null, DefaultLimits.CommonPractice, null), JudgedMount.Item(part));
        }
        if (judged.Mount.Spacers is not { } spacers) return;
        var limit = judged.Limit(MountCodes.AdapterLever);
        var ratio = spacers / judged.Mount.Bolts.Size.Diameter;
        var (severity, step) = Grading.Of(limit, ratio);
        if (severity != Severity.Pass)
            findings.Add(new Finding(MountCodes.AdapterLever, severity, [PartNames.Of(MountPart.Structure, 0)],
                $"Spacers of {judged.Text(spacers)} are {Wording.Number(ratio)} times the diameter of their {judged.Mount.Bolts.Size.Id} bolts, limit {Wording.Number(step)}: they bend the bolts.",
                new(ratio, null), new(step, null), limit.Source, null), 0);
    }
}
