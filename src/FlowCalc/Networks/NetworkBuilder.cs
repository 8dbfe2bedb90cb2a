using System.Numerics;
using FlowCalc.Losses;

namespace FlowCalc.Networks;

/// <summary>Collects runs, parents before children, and packs them into a <see cref="Network"/>.</summary>
/// <param name="capacity">Number of runs expected.</param>
/// <param name="bends">Number of kinds of bend expected, of all runs together.</param>
/// <param name="nozzles">Number of nozzles expected.</param>
internal sealed class NetworkBuilder(int capacity, int bends = 0, int nozzles = 0)
{
    readonly List<int> _parent = new(capacity);
    readonly List<RunGeometry> _runs = new(capacity);
    readonly List<int> _nozzles = new(nozzles);
    readonly List<double> _nozzleArea = new(nozzles);
    readonly List<(int Run, TeeLeg Leg, double InletBore)> _legs = [];
    readonly List<(int Run, BendShape Shape, int Count)> _bends = new(bends);
    readonly List<(int Run, double Bore, double PerFriction, double Roughness)> _throats = [];

    /// <summary>Adds the run that feeds a new point, and gives the point's index.</summary>
    /// <param name="parent">Point that it leaves; −1 for the first.</param>
    /// <param name="run">Its geometry.</param>
    public int AddRun(int parent, RunGeometry run)
    {
        if (parent >= _runs.Count || parent < 0 != (_runs.Count == 0))
            throw new ArgumentOutOfRangeException(nameof(parent), parent, "Parents come before children; only the first run has none.");
        _parent.Add(parent);
        _runs.Add(run);
        return _runs.Count - 1;
    }

    /// <summary>Makes a point a nozzle.</summary>
    /// <param name="point">Its index.</param>
    /// <param name="area">Area times discharge coefficient, m², over 0.</param>
    public void AddNozzle(int point, double area)
    {
        _nozzles.Add(point);
        _nozzleArea.Add(area);
    }

    /// <summary>Gives a run the loss of the tee leg by which it leaves.</summary>
    /// <param name="run">Its index.</param>
    /// <param name="leg">The leg's factors.</param>
    /// <param name="inletBore">Bore of the tube that feeds the tee, m.</param>
    public void AddTeeLeg(int run, TeeLeg leg, double inletBore) => _legs.Add((run, leg, inletBore));

    /// <summary>Adds equal bends to a run.</summary>
    /// <param name="run">Its index.</param>
    /// <param name="shape">Shape of one bend.</param>
    /// <param name="count">How many.</param>
    public void AddBend(int run, BendShape shape, int count) => _bends.Add((run, shape, count));

    /// <summary>Adds the friction inside a fitting; its constant part belongs to the run's geometry.</summary>
    /// <param name="run">Its index.</param>
    /// <param name="bore">Bore of the fitting, m.</param>
    /// <param name="lengthOverBore">Its length over its bore times the number of such fittings, dimensionless.</param>
    /// <param name="roughness">Wall roughness over the fitting's bore, dimensionless.</param>
    public void AddThroat(int run, double bore, double lengthOverBore, double roughness) => _throats.Add((run, bore, lengthOverBore, roughness));

    /// <summary>Packs what was collected.</summary>
    public Network Build()
    {
        var count = _runs.Count;
        var padded = Padded(count);
        double[] perFlow = new double[padded], weight = new double[padded], rough = new double[padded], constant = new double[padded], rise = new double[count];
        for (var j = 0; j < count; j++)
        {
            var run = _runs[j];
            var diameter = run.Bore;
            perFlow[j] = 4 / (Math.PI * diameter * run.Parallel);
            weight[j] = run.StraightLength / (2 * diameter * diameter * diameter);
            rough[j] = run.RelativeRoughness / 3.7;
            constant[j] = run.Constant / ((double)run.Parallel * run.Parallel);
            rise[j] = run.Rise;
        }
        var order = Order(_nozzles);
        return new Network
        {
            Count = count,
            Parent = [.. _parent],
            Tubes = new(count, null, perFlow, weight, rough),
            Throats = Throats(),
            Constant = constant,
            Rise = rise,
            Bends = Bends(),
            Tees = Tees(),
            Nozzles = Array.ConvertAll(order, i => _nozzles[i]),
            NozzleArea = Array.ConvertAll(order, i => _nozzleArea[i]),
            HasRise = Array.Exists(rise, z => z != 0),
        };
    }

    FrictionSegments Throats()
    {
        var count = _throats.Count;
        var padded = Padded(count);
        var run = new int[padded];
        double[] perFlow = new double[padded], weight = new double[padded], rough = new double[padded];
        for (var i = 0; i < count; i++)
        {
            var (owner, bore, lengthOverBore, roughness) = _throats[i];
            run[i] = owner;
            perFlow[i] = 4 / (Math.PI * bore);
            weight[i] = lengthOverBore / (2 * bore * bore);
            rough[i] = roughness / 3.7;
        }
        return new(count, run, perFlow, weight, rough);
    }

    BendSet Bends()
    {
        var count = _bends.Count;
        var padded = Padded(count);
        var run = new int[padded];
        double[] perFlow = new double[padded], weight = new double[padded], rough = new double[padded];
        double[] perFriction = new double[padded], constant = new double[padded], arc = new double[padded], dean = new double[padded];
        for (var i = 0; i < count; i++)
        {
            var (owner, shape, number) = _bends[i];
            var bore = _runs[owner].Bore;
            run[i] = owner;
            perFlow[i] = 4 / (Math.PI * bore);
            weight[i] = number / (2 * bore * bore);
            rough[i] = _runs[owner].RelativeRoughness / 3.7;
            perFriction[i] = shape.PerFriction;
            constant[i] = shape.Constant;
            arc[i] = shape.ArcOverBore;
            dean[i] = Math.Sqrt(0.5 / shape.RadiusOverBore);
        }
        return new(count, run, perFlow, weight, rough, perFriction, constant, arc, dean);
    }

    TeeLegs Tees()
    {
        var count = _legs.Count;
        var run = new int[count];
        double[] own = new double[count], mixed = new double[count], inlet = new double[count], eighth = new double[count];
        for (var i = 0; i < count; i++)
        {
            var (owner, leg, inletBore) = _legs[i];
            var perCoefficient = Resistance.PerCoefficient(inletBore);
            run[i] = owner;
            (own[i], mixed[i], inlet[i], eighth[i]) = (leg.Own * perCoefficient, leg.Mixed * perCoefficient, leg.Inlet * perCoefficient, leg.Eighth * perCoefficient);
        }
        return new(run, own, mixed, inlet, eighth);
    }

    static int[] Order(List<int> points)
    {
        var order = new int[points.Count];
        for (var i = 0; i < order.Length; i++) order[i] = i;
        Array.Sort(points.ToArray(), order);
        return order;
    }

    /// <summary>A number of entries with the padding to whole vectors.</summary>
    /// <param name="count">The number without it.</param>
    public static int Padded(int count) => (count + Vector<double>.Count - 1) / Vector<double>.Count * Vector<double>.Count;
}
