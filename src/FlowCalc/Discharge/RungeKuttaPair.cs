namespace FlowCalc.Discharge;

/// <summary>The coefficients of an embedded Runge-Kutta pair whose last stage stands at the end of the step.</summary>
/// <param name="order">Order of the error that a step is measured by, which says how it shrinks with the step.</param>
/// <param name="nodes">Part of the step at which each stage stands.</param>
/// <param name="stages">Weights of the stages before it in each stage; those of the last are those of the step.</param>
/// <param name="error">Weights of the error.</param>
/// <param name="dense">Weights of the polynomial's last term; none for the cubic that the ends and their rates give.</param>
internal sealed class RungeKuttaPair(int order, double[] nodes, double[][] stages, double[] error, double[] dense)
{
    /// <summary>Order 5(4), with a polynomial of order 4.</summary>
    /// <remarks>
    /// Dormand, Prince 1980; interpolant of Shampine 1986 in the form of Hairer, Nørsett, Wanner, Solving Ordinary Differential Equations I,
    /// 2nd ed. 1993, section II.6.
    /// </remarks>
    public static RungeKuttaPair DormandPrince { get; } = new(
        5,
        [0, 1.0 / 5, 3.0 / 10, 4.0 / 5, 8.0 / 9, 1, 1],
        [
            [],
            [1.0 / 5],
            [3.0 / 40, 9.0 / 40],
            [44.0 / 45, -56.0 / 15, 32.0 / 9],
            [19372.0 / 6561, -25360.0 / 2187, 64448.0 / 6561, -212.0 / 729],
            [9017.0 / 3168, -355.0 / 33, 46732.0 / 5247, 49.0 / 176, -5103.0 / 18656],
            [35.0 / 384, 0, 500.0 / 1113, 125.0 / 192, -2187.0 / 6784, 11.0 / 84],
        ],
        [71.0 / 57600, 0, -71.0 / 16695, 71.0 / 1920, -17253.0 / 339200, 22.0 / 525, -1.0 / 40],
        [
            -12715105075.0 / 11282082432, 0, 87487479700.0 / 32700410799, -10690763975.0 / 1880347072,
            701980252875.0 / 199316789632, -1453857185.0 / 822651844, 69997945.0 / 29380423,
        ]);

    /// <summary>Order 3(2), with a cubic: half the work a step, for steps that events keep short whatever their order.</summary>
    /// <remarks>Bogacki, Shampine, A 3(2) pair of Runge-Kutta formulas, Appl. Math. Lett. 2 (1989) 321 (from memory).</remarks>
    public static RungeKuttaPair BogackiShampine { get; } = new(
        3,
        [0, 1.0 / 2, 3.0 / 4, 1],
        [[], [1.0 / 2], [0, 3.0 / 4], [2.0 / 9, 1.0 / 3, 4.0 / 9]],
        [-5.0 / 72, 1.0 / 12, 1.0 / 9, -1.0 / 8],
        []);

    /// <summary>Stages of a step, its start among them.</summary>
    public int Count => nodes.Length;

    /// <summary>Part of the step at which a stage stands.</summary>
    public double Node(int stage) => nodes[stage];

    /// <summary>Weights of the stages before a stage.</summary>
    public ReadOnlySpan<double> Stage(int stage) => stages[stage];

    /// <summary>Weights of the error.</summary>
    public ReadOnlySpan<double> Error => error;

    /// <summary>Weights of the polynomial's last term.</summary>
    public ReadOnlySpan<double> Dense => dense;

    /// <summary>By how much a step should be longer or shorter for an error that is this part of the one allowed.</summary>
    public double Stretch(double error) => 0.9 * Math.Pow(error, -1.0 / order);
}
