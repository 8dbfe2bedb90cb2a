using System.ComponentModel.DataAnnotations;
using FlowCalc.Api.Answers;

namespace FlowCalc.Api.Tolerance;

/// <summary>What varied.</summary>
/// <param name="Path">Its path by ids and names.</param>
/// <param name="Kind">Its kind.</param>
/// <param name="Design">Its value in the layout.</param>
/// <param name="Spread">How it is spread.</param>
/// <param name="Low">Least value; of a normal four standard deviations below the design.</param>
/// <param name="High">Greatest value; of a normal four standard deviations above the design.</param>
/// <param name="Source">Whose spread it is.</param>
public sealed record InputAnswer(
    string Path,
    [property: AllowedValues("bore", "roughness", "length", "kFactor", "chargePressure", "fill", "temperature")] string Kind,
    Quantity Design,
    [property: AllowedValues("normal", "uniform", "triangular")] string Spread,
    Quantity Low,
    Quantity High,
    string Source);
