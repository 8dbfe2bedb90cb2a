using FlowCalc.Api.Answers;

namespace FlowCalc.Api.CutLists;

/// <summary>All that is cut of one tube.</summary>
/// <param name="Tube">Its name, or its bore where it has none.</param>
/// <param name="OutsideDiameter">Outside diameter; null where not known.</param>
/// <param name="Bore">Bore.</param>
/// <param name="Material">Material, in the document's words; null where not given.</param>
/// <param name="Pieces">How many pieces are cut of it.</param>
/// <param name="Finished">Length of all finished pieces, each up to the next whole millimetre.</param>
/// <param name="Order">Length to order: all that is sawn, a kerf each, and the spare.</param>
/// <param name="Mass">Mass of the finished pieces; null where wall or material are not known.</param>
/// <param name="Filled">Volume inside its runs, full.</param>
/// <param name="Stock">How its pieces are cut from the stock; null where none is stated.</param>
public sealed record TubeOrderAnswer(
    string Tube,
    Quantity? OutsideDiameter,
    Quantity Bore,
    string? Material,
    int Pieces,
    Quantity Finished,
    Quantity Order,
    Quantity? Mass,
    Quantity Filled,
    StockAnswer? Stock);
