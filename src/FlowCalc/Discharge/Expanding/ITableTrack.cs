using FlowCalc.Agents;

namespace FlowCalc.Discharge;

/// <summary>The stream's tables along a discharge: made for a few states that the bottle is going to have, and put together for those between.</summary>
internal interface ITableTrack
{
    /// <summary>Forgets all tables, where what leaves is something else than before.</summary>
    void Clear();

    /// <summary>The table of the present state.</summary>
    /// <param name="y">State.</param>
    /// <returns>Null where the stream has no way to the surroundings within its data.</returns>
    ExpansionTable? Of(ReadOnlySpan<double> y);

    /// <summary>The table of a state within the step ahead.</summary>
    /// <param name="y">State.</param>
    /// <param name="now">State at the start of the step.</param>
    /// <param name="mayMake">Whether one may be made for this state alone.</param>
    /// <returns>Null where there is none of the same kind of stream.</returns>
    ExpansionTable? Ahead(ReadOnlySpan<double> y, ReadOnlySpan<double> now, bool mayMake);

    /// <summary>Makes tables as far as a step reaches, and further where the state there can be told.</summary>
    /// <param name="y">State at its start.</param>
    /// <param name="rate">Its rates.</param>
    /// <param name="step">Size of the step, s.</param>
    /// <param name="largest">Size of the largest step allowed here, s.</param>
    void Reach(ReadOnlySpan<double> y, ReadOnlySpan<double> rate, double step, double largest);
}
