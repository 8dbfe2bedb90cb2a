namespace FlowCalc.Calibration;

/// <summary>The flow or the discharge of a test was not found at some size of the unknowns; ends the fit of one cause and no more.</summary>
sealed class TestNotSolvedException(string why) : Exception(why);
