using FlowCalc.Findings;
using UnitsNet;

namespace FlowCalc.Studies.Comparing;

/// <summary>How good a layout is, by what decides first.</summary>
/// <param name="HasFlow">Whether its steady flow was found.</param>
/// <param name="Verdict">The worse verdict of flow and discharge.</param>
/// <param name="Fails">Places of failing findings; one that flow and discharge both find counts once.</param>
/// <param name="Warns">Places of warnings, counted alike.</param>
/// <param name="WorstDeviation">Deviation of the nozzle that is furthest from its wanted share, −1 and up: by mass in the worst case of the discharge, else by flow; null where nothing is wanted.</param>
/// <param name="WorstNozzle">Index of that nozzle in <see cref="Layouts.Layout.Points"/>; −1 for none.</param>
/// <param name="SlowestTime">The longest time over the cases until the required part, else 95 %, was out; null without a discharge, or where a case never comes to it.</param>
/// <param name="NeverDone">Cases of the discharge that have no such time.</param>
public sealed record Standing(bool HasFlow, Severity Verdict, int Fails, int Warns, double? WorstDeviation, int WorstNozzle, Duration? SlowestTime, int NeverDone);
