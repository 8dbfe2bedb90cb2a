using UnitsNet;

namespace FlowCalc.Layouts;

/// <summary>What a bottle's gauge showed, and where its dial is green.</summary>
/// <param name="Reading">Absolute pressure; null where only the green is given.</param>
/// <param name="Temperature">Temperature of the bottle then; null where nothing was read.</param>
/// <param name="On">When; null where not given.</param>
/// <param name="Green">Absolute pressures between which the dial is green; null where not given.</param>
public sealed record GaugeReading(Pressure? Reading, Temperature? Temperature, ServiceDate? On, PressureRange? Green);
