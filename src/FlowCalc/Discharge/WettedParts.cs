using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>Bends, throats and tee legs of the wetted runs, picked out of the whole line's.</summary>
internal static class WettedParts
{
    /// <summary>Bends of the runs, with weights as in a full line.</summary>
    public static BendSet Bends(LineGeometry geometry, int[] runs, int padded, int count)
    {
        var all = geometry.Network.Bends;
        var bends = new BendSet(
            count, new int[padded], new double[padded], new double[padded], new double[padded], new double[padded], new double[padded], new double[padded], new double[padded]);
        var at = 0;
        for (var k = 0; k < runs.Length; k++)
        {
            if (runs[k] < 0) continue;
            for (var i = geometry.BendStart[runs[k]]; i < geometry.BendStart[runs[k] + 1]; i++, at++)
            {
                bends.Run[at] = k;
                (bends.ReynoldsPerFlow[at], bends.Weight[at], bends.Roughness[at]) = (all.ReynoldsPerFlow[i], all.Weight[i], all.Roughness[i]);
                (bends.PerFriction[at], bends.Constant[at]) = (all.PerFriction[i], all.Constant[i]);
                (bends.ArcOverBore[at], bends.DeanPerReynolds[at]) = (all.ArcOverBore[i], all.DeanPerReynolds[i]);
            }
        }
        return bends;
    }

    /// <summary>Throats of the runs, with weights as in a full line.</summary>
    public static FrictionSegments Throats(LineGeometry geometry, int[] runs, int padded, int count)
    {
        var all = geometry.Network.Throats;
        var throats = new FrictionSegments(count, new int[padded], new double[padded], new double[padded], new double[padded]);
        var at = 0;
        for (var k = 0; k < runs.Length; k++)
        {
            if (runs[k] < 0) continue;
            for (var i = geometry.ThroatStart[runs[k]]; i < geometry.ThroatStart[runs[k] + 1]; i++, at++)
            {
                throats.Run![at] = k;
                (throats.ReynoldsPerFlow[at], throats.Weight[at], throats.Roughness[at]) = (all.ReynoldsPerFlow[i], all.Weight[i], all.Roughness[i]);
            }
        }
        return throats;
    }

    /// <summary>Tee legs of the runs that liquid enters.</summary>
    public static TeeLegs Legs(LineGeometry geometry, LineState line, int[] runs, int count)
    {
        var all = geometry.Network.Tees;
        var legs = new TeeLegs(new int[count], new double[count], new double[count], new double[count], new double[count]);
        var at = 0;
        for (var k = 0; k < runs.Length; k++)
        {
            if (runs[k] < 0 || !WettedTree.HasLeg(geometry, line, runs[k])) continue;
            var i = geometry.Leg[runs[k]];
            legs.Run[at] = k;
            (legs.Own[at], legs.Mixed[at], legs.Inlet[at], legs.Eighth[at]) = (all.Own[i], all.Mixed[i], all.Inlet[i], all.Eighth[i]);
            at++;
        }
        return legs;
    }
}
