namespace FlowCalc.Workbench.Fields;

/// <summary>How what is typed stands in the document.</summary>
public enum ValueForm
{
    /// <summary>As text: names, and quantities with their unit.</summary>
    Text,

    /// <summary>As a bare number; what is none stays text, and reading it then says what is wrong.</summary>
    Number,

    /// <summary>As a list of texts, parted by commas: a place, a range.</summary>
    List,

    /// <summary>As a list of such lists, one a line: corners.</summary>
    Lines,

    /// <summary>As JSON where it is JSON; else text.</summary>
    Json,
}
