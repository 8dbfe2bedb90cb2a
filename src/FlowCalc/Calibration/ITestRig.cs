using FlowCalc.Layouts;

namespace FlowCalc.Calibration;

/// <summary>Works out what a test would have read.</summary>
interface ITestRig
{
    /// <summary>The layout as it was tested: with the liquid and the supply of the test.</summary>
    Layout Tested { get; }

    /// <summary>The readings of a changed layout, in the order and units of the test's.</summary>
    /// <param name="changed">The tested layout with other tubes or nozzles.</param>
    /// <param name="pressureFactor">Gauge pressure of the supply over that which was read, over 0.</param>
    /// <exception cref="TestNotSolvedException">There is no answer.</exception>
    double[] Read(Layout changed, double pressureFactor);
}
