using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Discharge;

/// <summary>What an application asks of a discharge where the document does not say.</summary>
public static class ApplicationRequirement
{
    /// <summary>Whose rule the default is.</summary>
    public const string MotorsportSource =
        "FIA Formula One technical regulations, article 14.1.4, an older edition seen second-hand: 95 % of the contents in 10 s to 30 s; another class may ask for something else";

    /// <summary>The default.</summary>
    /// <param name="application">The application.</param>
    /// <returns>Null where none is known for a liquid.</returns>
    public static Requirement? Of(Application application) => application == Application.Motorsport
        ? new Requirement(0.95, true, null, Duration.FromSeconds(10), Duration.FromSeconds(30))
        : null;
}
