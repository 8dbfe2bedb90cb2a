using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>The right-hand side of the discharge: from bottle, fronts and time to what changes how fast, by one solve of the wetted tree.</summary>
internal sealed class DischargeRates
{
    readonly DischargeProblem problem;
    readonly LineGeometry geometry;
    readonly LineState line;
    readonly StateVector vector;
    readonly CancellationToken cancellation;
    readonly double gasRatio;
    readonly double settled;

    /// <summary>Makes the right-hand side of a problem.</summary>
    public DischargeRates(DischargeProblem problem, LineGeometry geometry, LineState line, StateVector vector, CancellationToken cancellation)
    {
        (this.problem, this.geometry, this.line, this.vector, this.cancellation) = (problem, geometry, line, vector, cancellation);
        gasRatio = problem.Cushion.Gas.IdealHeatCapacityRatio(problem.Cushion.Temperature);
        // Newton squares the error: what is left after such a step is below what a step of time may err.
        settled = Math.Sqrt(problem.Tolerance);
    }

    /// <summary>What is wetted in this phase.</summary>
    public WettedTree Tree { get; set; } = null!;

    /// <summary>Whether the dip tube draws gas.</summary>
    public bool IsUncovered { get; set; }

    /// <summary>Whether a nozzle passes gas.</summary>
    public bool IsGasOut { get; set; }

    /// <summary>Absolute pressure in the bottle at the last call, Pa.</summary>
    public double BottlePressure { get; private set; }

    /// <summary>Flow of liquid through the wetted tree at the last call, kg/s.</summary>
    public double LiquidFlow { get; private set; }

    /// <summary>Why the last call has no answer; null where it has one.</summary>
    public string? Failure { get; private set; }

    /// <summary>Drops the reason of a call that a smaller step has made good.</summary>
    public void Forget() => Failure = null;

    /// <summary>Rates of change.</summary>
    /// <param name="time">Time since the valve began to open, s.</param>
    /// <param name="y">The state.</param>
    /// <param name="rates">Its rates; overwritten.</param>
    /// <returns>False where there is no answer.</returns>
    public bool Fill(double time, Span<double> y, Span<double> rates)
    {
        rates.Clear();
        var (volume, temperature, mass) = (y[StateVector.GasVolume], y[StateVector.GasTemperature], y[StateVector.GasMass]);
        var density = mass / volume;
        var point = problem.Cushion.At(temperature, density);
        BottlePressure = point.Pressure;
        if (!(volume > 0 && mass > 0 && double.IsFinite(point.Pressure)))
        {
            Failure = "The gas of the cushion left the range of its data.";
            return false;
        }
        var surface = SurfaceHeight(volume);
        if (!SolveLine(time, y, point.Pressure, surface)) return false;
        LineRates(rates);

        var perBottle = 1.0 / problem.Count;
        var volumeRate = LiquidFlow / problem.Liquid.ReferenceDensity * perBottle;
        var massRate = IsGasOut ? -GasFlow(point.Pressure, density) * perBottle : 0;
        if (IsUncovered && problem.SetPressure < point.Pressure)
        {
            // Behind a regulator the line holds gas of its set pressure, so that the bottle's own gas expands by so much less.
            massRate -= density * volumeRate * problem.SetPressure / point.Pressure;
            volumeRate = 0;
        }
        rates[StateVector.GasVolume] = volumeRate;
        rates[StateVector.GasMass] = massRate;
        var state = new CushionState(temperature, density, mass, y[StateVector.WallTemperature],
            problem.Level is { } level ? level.WallAreaAbove(surface) : problem.WallArea,
            problem.Level?.SurfaceArea(surface) ?? 0);
        rates[StateVector.GasTemperature] = problem.Cushion.Rates(state, point, (massRate - density * volumeRate) / volume, out var wallRate);
        rates[StateVector.WallTemperature] = wallRate;
        return true;
    }

    double SurfaceHeight(double gasVolume) =>
        problem.Level is { } level ? level.HeightOf(Math.Max(problem.BottleVolume - gasVolume, IsUncovered ? problem.VolumeLeft : 0)) : 0;

    bool SolveLine(double time, Span<double> y, double bottle, double surface)
    {
        LiquidFlow = 0;
        var state = Tree.State;
        if (Tree.Outlets.Length == 0) return true;
        FrontLosses.Follow(problem, geometry, line, Tree, vector.HeadsOf(y), vector.TailsOf(y));
        var hasOutlet = Tree.Runs[0] == 0;
        var constants = state.Network.Constant;
        if (hasOutlet) constants[0] = geometry.Network.Constant[0] + OpeningResistance(time);
        var head = IsUncovered || !problem.HasHead
            ? 0
            : problem.Liquid.ReferenceDensity * HydrostaticRise.StandardGravity * problem.Gravity * (surface - problem.InletHeight);
        var reservoir = bottle + head;
        if (!hasOutlet) reservoir = Math.Min(reservoir, problem.SetPressure);
        var isSolved = Solve(state, reservoir);
        if (isSolved && hasOutlet && problem.Liquid.Pressure(state.Potential[0]) > problem.SetPressure)
        {
            // The open outlet would deliver more than the regulator lets through: it throttles, and holds its set pressure.
            var (weight, rise) = (state.Network.Tubes.Weight[0], state.Network.Rise[0]);
            (constants[0], state.Network.Tubes.Weight[0], state.Network.Rise[0]) = (0, 0, 0);
            isSolved = Solve(state, problem.SetPressure);
            (state.Network.Tubes.Weight[0], state.Network.Rise[0]) = (weight, rise);
        }
        if (isSolved) LiquidFlow = state.Flow[0];
        return isSolved;
    }

    bool Solve(SteadyState state, double reservoir)
    {
        var report = QuasiSteadySolver.Solve(state, problem.Liquid, reservoir, settled, cancellation);
        Failure = report;
        return report is null;
    }

    double OpeningResistance(double time)
    {
        if (time >= problem.OpeningTime) return 0;
        var part = Math.Max(time / problem.OpeningTime, 1e-4);
        return problem.ValveResistance * (1 / (part * part) - 1);
    }

    void LineRates(Span<double> rates)
    {
        var flow = Tree.State.Flow;
        var heads = vector.HeadsOf(rates);
        var tails = vector.TailsOf(rates);
        if (Tree.Outlets.Length == 0) return;
        foreach (var outlet in Tree.Outlets)
            if (outlet.Nozzle >= 0) rates[StateVector.Delivered + outlet.Nozzle] = flow[outlet.Point];
        foreach (var k in Tree.Moving)
        {
            var j = Tree.Runs[k];
            var rate = flow[k] / (problem.Liquid.ReferenceDensity * problem.Volume[j]);
            if (!line.IsFull[j]) heads[j] = rate;
            if (line.IsSwept[j]) tails[j] = rate / (1 - problem.Film);
        }
    }

    double GasFlow(double pressure, double density)
    {
        var before = Math.Min(pressure, problem.SetPressure);
        var flux = GasNozzle.Flux(before, density * before / pressure, gasRatio, problem.Ambient);
        var network = geometry.Network;
        double area = 0;
        for (var i = 0; i < network.Nozzles.Length; i++)
            if (line.IsGas[network.Nozzles[i]]) area += network.NozzleArea[i];
        return flux * area;
    }
}
