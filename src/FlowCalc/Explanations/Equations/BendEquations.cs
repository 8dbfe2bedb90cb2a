using static FlowCalc.Explanations.Symbols;

namespace FlowCalc.Explanations;

/// <summary>The loss of a formed bend.</summary>
internal static class BendEquations
{
    const string Book = "D. C. Rennels and H. M. Hudson, Pipe Flow, Wiley 2012, ch. 15 (form seen in the documentation of the open library fluids)";

    public static readonly Equation HeldReynolds = new()
    {
        Id = "bend-reynolds",
        Name = "Reynolds number at which a bend's turbulent friction factor is taken",
        Template = "√({Re}² + 500²)",
        Symbols = [Plain("Reh", "Reynolds number held over 500"), Reynolds],
        Range = "any flow; it leaves turbulent flow alone and stays finite at rest",
        Source = "a modelling choice of this project",
    };

    public static readonly Equation Turbulent = new()
    {
        Id = "bend-turbulent",
        Name = "loss coefficient of a smooth bend in turbulent flow, the friction of its arc included",
        Template = "{f}·{θ}·{r}/{D} + (0.10 + 2.4·{f})·s + 6.6·{f}·(√s + s)/({r}/{D})^(4·{θ}/π)",
        With = "s = sin({θ}/2)",
        Symbols = [Plain("Kt", "turbulent loss coefficient"), Friction.As("f", "Colebrook's factor at Reh"), Angle, Radius, Bore],
        Range = "θ to 180°, r/D of 0.5 and more, of 1.5 and more beyond 90°",
        Source = Book,
    };

    public static readonly Equation Dean = new()
    {
        Id = "dean",
        Name = "Dean number",
        Template = "{Re}·√({D}/(2·{r}))",
        Symbols = [Plain("De", "Dean number"), Reynolds, Bore, Radius],
        Range = "any flow",
        Source = "definition",
    };

    public static readonly Equation CurvedFriction = new()
    {
        Id = "curved-tube-friction",
        Name = "friction factor of laminar flow in a curved tube",
        Template = "64/{Re}/(1 - (1 - (11.6/{De})^0.45)^(1/0.45))",
        Symbols = [Plain("fc", "friction factor in the arc"), Reynolds, Plain("De", "Dean number")],
        Range = "De 11.6 to 2000, below it 64/Re; evaluated above, where the turbulent form outweighs it",
        Source = "C. M. White, Streamline flow through curved pipes, Proc. R. Soc. Lond. A 123 (1929) 645–663 (from memory; the form as in the open library fluids)",
    };

    public static readonly Equation Laminar = new()
    {
        Id = "bend-laminar",
        Name = "loss coefficient of a bend in laminar flow",
        Template = "{fc}·{θ}·{r}/{D}",
        Symbols = [Plain("Kl", "laminar loss coefficient"), Plain("fc", "friction factor in the arc"), Angle, Radius, Bore],
        Range = "laminar flow",
        Source = "friction over the length of the arc",
    };

    public static readonly Equation Both = new()
    {
        Id = "bend-both",
        Name = "loss coefficient of a bend in any flow",
        Template = "({Kt}^8 + {Kl}^8)^(1/8)",
        Symbols = [Coefficient, Plain("Kt", "turbulent loss coefficient"), Plain("Kl", "laminar loss coefficient")],
        Range = "any flow; about ±25 % below Re 4000",
        Source = "a judgement of this project",
    };
}
