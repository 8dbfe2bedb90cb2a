using FlowCalc.Networks;

namespace FlowCalc.Discharge;

/// <summary>Keeps instants of a discharge, close enough for smooth curves and never more than so many.</summary>
internal sealed class SampleStore(DischargeProblem problem, LineState line)
{
    // Beyond, every second sample goes: what is kept does not grow with the length of the discharge.
    const int MostSamples = 512;

    // Distance of instants within a step, as a part of the time that has passed, and the most of them in one step.
    const double Spacing = 0.05;
    const int MostPieces = 6;

    readonly List<DischargeSample> samples = [];

    /// <summary>Greatest flow of all nozzles together, kg/s.</summary>
    public double PeakFlow { get; private set; }

    /// <summary>Keeps an instant.</summary>
    /// <param name="time">Time, s.</param>
    /// <param name="pressure">Absolute pressure in the bottle, Pa.</param>
    /// <param name="temperature">Temperature of the gas, K.</param>
    /// <param name="liquid">Volume of liquid in one bottle, m³.</param>
    /// <param name="flow">Flow out of each nozzle, kg/s; kept.</param>
    /// <param name="delivered">Mass out of each nozzle, kg; kept.</param>
    public void Add(double time, double pressure, double temperature, double liquid, double[] flow, double[] delivered)
    {
        if (samples.Count >= MostSamples) Thin();
        var pressures = new double[flow.Length];
        double total = 0;
        for (var i = 0; i < flow.Length; i++)
        {
            pressures[i] = PressureAt(i, flow[i], pressure);
            total += flow[i];
        }
        PeakFlow = Math.Max(PeakFlow, total);
        samples.Add(new(time, pressure, temperature, problem.Liquid.ReferenceDensity * problem.Count * liquid, flow, pressures, delivered));
    }

    /// <summary>Keeps instants within the last step, and its end where a jump follows.</summary>
    /// <param name="stepper">The step, not taken yet.</param>
    /// <param name="trace">Knows the liquid in the bottle.</param>
    /// <param name="time">Time at the step's start, s.</param>
    /// <param name="part">Part of the step that is kept; below 1 where a jump follows.</param>
    public void AddWithin(EmbeddedStep stepper, DischargeTrace trace, double time, double part)
    {
        var kept = part * stepper.Size;
        var pieces = (int)Math.Clamp(Math.Ceiling(kept / (Spacing * (time + kept))), 1, MostPieces);
        for (var i = 1; i <= pieces; i++)
        {
            if (i == pieces && part >= 1) break;
            // The very time of the jump, not one beside it by rounding.
            var at = i == pieces ? part : part * i / pieces;
            double[] flow = new double[problem.Network.Nozzles.Length], delivered = new double[flow.Length];
            for (var n = 0; n < flow.Length; n++)
                (flow[n], delivered[n]) = (Math.Max(stepper.RateAt(StateVector.Delivered + n, at), 0), stepper.At(StateVector.Delivered + n, at));
            var (volume, temperature) = (stepper.At(StateVector.GasVolume, at), stepper.At(StateVector.GasTemperature, at));
            var pressure = problem.Cushion.At(temperature, stepper.At(StateVector.GasMass, at) / volume).Pressure;
            Add(time + at * stepper.Size, pressure, temperature, trace.BottleVolume(volume), flow, delivered);
        }
    }

    /// <summary>What was kept, in rising time.</summary>
    public DischargeSample[] ToArray() => [.. samples];

    double PressureAt(int nozzle, double flow, double bottle)
    {
        if (line.IsGas[problem.Network.Nozzles[nozzle]]) return Math.Min(bottle, problem.SetPressure);
        return problem.Ambient + flow * flow * Resistance.OfArea(problem.Network.NozzleArea[nozzle]) / problem.Liquid.ReferenceDensity;
    }

    void Thin()
    {
        var kept = 1;
        for (var i = 2; i < samples.Count; i += 2) samples[kept++] = samples[i];
        samples.RemoveRange(kept, samples.Count - kept);
    }
}
