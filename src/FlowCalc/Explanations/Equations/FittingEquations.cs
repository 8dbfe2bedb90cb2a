using FlowCalc.Quantities;
using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>Fittings, valves and steps in bore.</summary>
internal static class FittingEquations
{
    const string Idelchik = "I. E. Idelchik, Handbook of Hydraulic Resistance, 3rd ed., ch. 4, thick-edged orifice (from memory)";

    public static readonly Equation CoefficientLoss = new()
    {
        Id = "coefficient-loss",
        Name = "loss by a coefficient on the velocity head",
        Template = "{n}·{K}·{ρ}·{v}·|{v}|/2",
        Symbols = [Drop, Count, Coefficient, Density, Symbols.Velocity.As("v", "mean velocity in the bore that K belongs to")],
        Range = "any flow",
        Source = "definition of a loss coefficient",
    };

    public static readonly Equation FlowCoefficient = new()
    {
        Id = "kv-loss",
        Name = "loss by a flow coefficient Kv",
        Template = "{n}·{ρ}/1000·({m}/{ρ})·|{m}/{ρ}|/{Kv}²",
        Symbols = [Drop, Count, Density, MassFlow, Of("Kv", "flow coefficient; 1 m3/h is 8.784105e-7 m3/s/Pa^0.5, 1 Cv (1 US gal/min at 1 psi) 7.598054e-7", QuantityKind.FlowCoefficient)],
        Range = "turbulent flow; below a valve Reynolds number of about 1e4 it promises too much",
        Source = "IEC 60534-1 (from memory)",
    };

    public static readonly Equation SharpTurn = new()
    {
        Id = "sharp-turn",
        Name = "loss coefficient of a sharp turn, on the head in its own bore",
        Template = "0.42·s + 2.56·s³",
        With = "s = sin({θ}/2)",
        Symbols = [Coefficient, Angle],
        Range = "θ to 150°; threaded elbows of small bore lose more",
        Source = "D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 15 (values seen in the open library fluids, form from memory)",
    };

    public static readonly Equation Contraction = new()
    {
        Id = "sharp-contraction",
        Name = "loss coefficient of a sudden contraction, on the head in the smaller bore",
        Template = "0.0696·(1 - b^5)·λ² + (λ - 1)²",
        With = "λ = 1 + 0.622·(1 - 0.215·b² - 0.785·b^5), b = {D1}/{D2}",
        Symbols = [Coefficient, SmallerBore, LargerBore],
        Range = "turbulent flow; handbooks spread by ±25 %",
        Source = "D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 10 (form seen in the open library fluids)",
    };

    public static readonly Equation Expansion = new()
    {
        Id = "sudden-expansion",
        Name = "loss coefficient of a sudden expansion, on the head in the smaller bore",
        Template = "(1 - ({D1}/{D2})²)²",
        Symbols = [Coefficient, SmallerBore, LargerBore],
        Range = "turbulent flow",
        Source = "J.-C. Borda 1766, L. Carnot 1803",
    };

    public static readonly Equation JetRecovery = new()
    {
        Id = "thick-orifice-tau",
        Name = "factor τ of a thick orifice, in straight lines between the table's points (l/d, τ): 0 1.35, 0.2 1.22, 0.4 1.10, 0.6 0.84, 0.8 0.42, 1 0.24, 1.2 0.16, 1.6 0.07, 2 0.02",
        Template = "{τa} + ({τb} - {τa})·({l}/{d} - {xa})/({xb} - {xa})",
        Symbols =
        [
            Plain("τ", "factor"), Of("l", "length of the tight bore", QuantityKind.Length), Of("d", "the tight bore", QuantityKind.Length),
            Plain("xa", "l/d of the point below"), Plain("τa", "τ there"), Plain("xb", "l/d of the point above"), Plain("τb", "τ there"),
        ],
        Range = "l/d under 2",
        Source = Idelchik,
    };

    public static readonly Equation ThickOrifice = new()
    {
        Id = "thick-orifice",
        Name = "loss coefficient of a short fitting of tighter bore, on the head in that bore",
        Template = "0.5·(1 - b²)^0.75 + {τ}·(1 - b²)^1.375 + (1 - b²)²",
        With = "b = {D1}/{D2}",
        Symbols = [Coefficient, Plain("τ", "factor by length"), SmallerBore, LargerBore],
        Range = "l/d under 2; ±30 %",
        Source = Idelchik,
    };
}
