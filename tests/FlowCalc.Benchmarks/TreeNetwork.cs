using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Benchmarks;

/// <summary>A random tree as the solver takes it.</summary>
internal static class TreeNetwork
{
    public static Network Of(RandomTree tree)
    {
        var count = tree.Parent.Length;
        var builder = new NetworkBuilder(count);
        builder.AddRun(-1, new RunGeometry(tree.Bore[1], 0, 0, 0, 0));
        var taken = new int[count];
        for (var j = 1; j < count; j++)
        {
            var (above, bore) = (tree.Parent[j], tree.Bore[j]);
            var constant = tree.HasTees ? 0 : tree.LossCoefficient[j] * Resistance.PerCoefficient(bore);
            var isFork = tree.HasTees && above > 0 && tree.Children[above] == 2;
            if (isFork && taken[above]++ == 0)
            {
                constant += Step(tree.Bore[above], bore);
                builder.AddRun(above, Geometry(tree, j, constant));
                builder.AddTeeLeg(j, RunFedTeeShape.Run(TeeBody.Smooth), tree.Bore[above]);
            }
            else
            {
                builder.AddRun(above, Geometry(tree, j, constant));
                if (isFork) builder.AddTeeLeg(j, RunFedTeeShape.Branch(bore / tree.Bore[above], 0, TeeBody.Smooth), tree.Bore[above]);
            }
            if (tree.HasTees) builder.AddBend(j, SmoothBend.Shape(tree.BendDegrees[j] * Math.PI / 180, 3), 1);
            if (tree.Children[j] == 0)
                builder.AddNozzle(j, Orifice.EffectiveArea(tree.NozzleDiameter[j], RandomTree.DischargeCoefficient));
        }
        return builder.Build();
    }

    static RunGeometry Geometry(RandomTree tree, int j, double constant) =>
        new(tree.Bore[j], tree.Length[j] - (tree.HasTees ? tree.BendDegrees[j] * Math.PI / 180 * 3 * tree.Bore[j] : 0), RandomTree.Roughness / tree.Bore[j], 0, constant);

    static double Step(double from, double to)
    {
        var (small, large) = (Math.Min(from, to), Math.Max(from, to));
        return (to < from ? BoreChange.SharpContraction(small / large) : BoreChange.Expansion(small / large)) * Resistance.PerCoefficient(small);
    }
}
