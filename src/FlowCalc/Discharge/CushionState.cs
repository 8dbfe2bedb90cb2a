namespace FlowCalc.Discharge;

/// <summary>The gas of one bottle at an instant.</summary>
/// <param name="Temperature">Temperature, K.</param>
/// <param name="Density">Density, kg/m³.</param>
/// <param name="Mass">Mass, kg.</param>
/// <param name="WallTemperature">Temperature of the dry wall, K.</param>
/// <param name="DryArea">Area of the dry wall, m².</param>
/// <param name="SurfaceArea">Area of the liquid's surface, m².</param>
internal readonly record struct CushionState(double Temperature, double Density, double Mass, double WallTemperature, double DryArea, double SurfaceArea);
