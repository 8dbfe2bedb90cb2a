namespace FlowCalc.ReferenceData;

/// <summary>One source of figures in the library: a paper, a standard, a book, or the plain statement that there is none.</summary>
/// <param name="Key">Short name used in the <c>source</c> column of every table.</param>
/// <param name="Author">Authors, or null where there is none.</param>
/// <param name="Title">Title.</param>
/// <param name="Edition">Edition, or null.</param>
/// <param name="Year">Year of publication as printed, or null where it is not known.</param>
/// <param name="Publisher">Publisher or journal, or null.</param>
/// <param name="Where">Pages, table, identifier; or null.</param>
/// <param name="Access">How far the text was seen, in a sentence.</param>
public sealed record Source(string Key, string? Author, string Title, string? Edition, string? Year, string? Publisher, string? Where, string Access);
