namespace FlowCalc.Layouts.Reading;

/// <summary>Checks that points and runs make a tree from one supply; no fault is invented for what could not be read.</summary>
/// <remarks>Time and memory grow with the number of points and runs; nothing recurs.</remarks>
ref struct TreeChecks
{
    readonly ReadingContext context;
    readonly JsonValue pointList;
    readonly PointDraft[] points;
    readonly RunDraft[] runs;
    readonly int[] feeding;
    readonly int[] leaving;
    readonly byte[] ports;
    readonly bool[] isExcused;
    bool hasStrayStart, hasStrayEnd, hasNoSupply;

    TreeChecks(ReadingContext context, JsonValue pointList, PointDraft[] points, RunDraft[] runs)
    {
        (this.context, this.pointList, this.points, this.runs) = (context, pointList, points, runs);
        (feeding, leaving, ports, isExcused) = (new int[points.Length], new int[points.Length], new byte[points.Length], new bool[points.Length]);
        feeding.AsSpan().Fill(-1);
    }

    /// <summary>Runs every check.</summary>
    public static void Run(ReadingContext context, in Members<DocumentField> root, PointDraft[] points, RunDraft[] runs)
    {
        var checks = new TreeChecks(context, root[DocumentField.Points], points, runs);
        for (var i = 0; i < runs.Length; i++)
        {
            context.Pass(i);
            checks.Connect(i);
        }
        checks.CheckKinds();
        for (var i = 0; i < points.Length; i++)
        {
            context.Pass(i);
            checks.CheckPoint(i);
        }
        LoopSearch.Run(context, points, runs, checks.feeding, checks.isExcused);
    }

    void Connect(int index)
    {
        var (from, to) = (runs[index].From, runs[index].To);
        hasStrayStart |= from < 0;
        hasStrayEnd |= to < 0;
        if (from >= 0 && from == to)
        {
            context.Faults.Add(runs[index].Element, "to", $"read {Name(to)}: the run leads from a point to itself; a run joins two points");
            isExcused[to] = true;
            return;
        }
        if (to >= 0) Feed(index, to);
        if (from >= 0) Leave(index, from);
    }

    readonly void Feed(int index, int to)
    {
        if (points[to].Kind is PointKind.Supply)
            context.Faults.Add(runs[index].Element, "to", $"read {Name(to)}: it is the supply, and no run comes to a supply");
        else if (feeding[to] < 0)
            feeding[to] = index;
        else
        {
            context.Faults.Add(runs[index].Element, "to", $"read {Name(to)}: two feeds; {RunName(feeding[to])} comes to it already, and a point is fed by one run");
            isExcused[to] = true;
        }
    }

    readonly void Leave(int index, int from)
    {
        ref readonly var run = ref runs[index];
        ref readonly var point = ref points[from];
        var most = MostLeaving(point.Kind);
        if (++leaving[from] > most)
            context.Faults.Add(run.Element, "from", most == 0
                ? $"read {Name(from)}: no run leaves a {Word(point.Kind)}"
                : $"read {Name(from)}: {leaving[from]} runs leave it; exactly {Number(most)} a {Word(point.Kind)}");
        CheckPort(index, from);
    }

    readonly void CheckPort(int index, int from)
    {
        ref readonly var run = ref runs[index];
        ref readonly var point = ref points[from];
        if (point.Kind is PointKind.Unknown || (point.Kind is PointKind.Tee && point.FedThrough is null)) return;
        if (point.Kind is not PointKind.Tee || point.FedThrough is TeePort.Branch)
        {
            var why = point.Kind is PointKind.Tee ? "is fed through its branch, so that both ways out are alike" : $"is a {Word(point.Kind)}";
            if (run.HasLeaves) context.Faults.Add(run.Element, "leaves", $"{Name(from)} {why}; leaves belongs to the runs that leave a tee fed through its run");
        }
        else if (!run.HasLeaves)
            context.Faults.Add(run.Element, "leaves", $"missing: {Name(from)} is a tee fed through its run; say run or branch, the port that this run leaves by");
        else if (run.Leaves is { } port)
        {
            var bit = (byte)(1 << (int)port);
            if ((ports[from] & bit) != 0)
                context.Faults.Add(run.Element, "leaves", $"read \"{PointReader.Ports.Words[(int)port]}\": another run leaves {Name(from)} by that port; one leaves by run, one by branch");
            ports[from] |= bit;
        }
    }

    void CheckKinds()
    {
        var (supplies, nozzles, unknown) = (0, 0, 0);
        foreach (ref readonly var point in points.AsSpan())
        {
            if (point.Kind is PointKind.Unknown) unknown++;
            else if (point.Kind is PointKind.Nozzle) nozzles++;
            else if (point.Kind is PointKind.Supply && ++supplies > 1)
                context.Faults.Add(point.Element, "kind", $"read \"supply\": {supplies} supplies; a layout has exactly one");
        }
        hasNoSupply = supplies == 0;
        if (hasNoSupply && unknown == 0) context.Faults.Add(pointList, "no point is a supply: a layout has exactly one, where the bottle's outlet joins the tube");
        if (nozzles == 0 && unknown == 0) context.Faults.Add(pointList, "no point is a nozzle: there is nothing to discharge");
    }

    readonly void CheckPoint(int index)
    {
        ref readonly var point = ref points[index];
        // Runs cannot name a point whose id could not be read, and without a supply any point may be meant for it.
        if (point.Id is null) return;
        if (!isExcused[index] && !hasStrayEnd && !hasNoSupply && feeding[index] < 0 && point.Kind is not (PointKind.Supply or PointKind.Unknown))
            context.Faults.Add(point.Element, $"{Name(index)} is not reached from the supply: no run comes to it, and every point but the supply is fed by exactly one");
        var least = LeastLeaving(point.Kind);
        if (leaving[index] < least && !hasStrayStart && !isExcused[index])
            context.Faults.Add(point.Element, leaving[index] == 0
                ? $"no run leaves {Name(index)}: {LeavingWords(point.Kind)}"
                : $"{Number(leaving[index])} leaves {Name(index)}: {LeavingWords(point.Kind)}");
    }

    readonly string Name(int point) => points[point].Id is { } id ? Said.Name(id) : "the point";

    readonly string RunName(int run) => runs[run].Run is { } known ? Said.Name(known.Id) : $"the run from {(runs[run].From < 0 ? "another point" : Name(runs[run].From))}";

    static string Word(PointKind kind) => PointReader.Kinds.Words[(int)kind];

    static string Number(int count) => count == 1 ? "one" : "two";

    static int MostLeaving(PointKind kind) => kind switch
    {
        PointKind.Supply or PointKind.Reducer => 1,
        PointKind.Tee => 2,
        PointKind.Nozzle or PointKind.Cap => 0,
        _ => int.MaxValue,
    };

    static int LeastLeaving(PointKind kind) => kind switch
    {
        PointKind.Supply or PointKind.Reducer or PointKind.Junction => 1,
        PointKind.Tee => 2,
        _ => 0,
    };

    static string LeavingWords(PointKind kind) => kind switch
    {
        PointKind.Tee => "exactly two leave a tee",
        PointKind.Junction => "one or more leave a junction; a closed end is a cap",
        _ => $"exactly one leaves a {Word(kind)}",
    };
}
