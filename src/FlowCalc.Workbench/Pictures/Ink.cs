namespace FlowCalc.Workbench.Pictures;

/// <summary>What a colour is for. Pages choose the colours by theme, paper has one set: <see cref="PaperInk"/>.</summary>
public enum Ink
{
    /// <summary>The sheet itself.</summary>
    Sheet,

    /// <summary>Text and outlines.</summary>
    Line,

    /// <summary>What stands back: axes, second lines, captions.</summary>
    Muted,

    /// <summary>Lines of a grid.</summary>
    Grid,

    /// <summary>What is chosen.</summary>
    Chosen,

    /// <summary>Nothing to say.</summary>
    Pass,

    /// <summary>A note.</summary>
    Note,

    /// <summary>A warning.</summary>
    Warn,

    /// <summary>A failure.</summary>
    Fail,

    /// <summary>Lowest of seven steps from little to much.</summary>
    Step1,

    /// <summary>Second of seven steps.</summary>
    Step2,

    /// <summary>Third of seven steps.</summary>
    Step3,

    /// <summary>Middle of seven steps.</summary>
    Step4,

    /// <summary>Fifth of seven steps.</summary>
    Step5,

    /// <summary>Sixth of seven steps.</summary>
    Step6,

    /// <summary>Highest of seven steps.</summary>
    Step7,

    /// <summary>First of eight kinds that are told apart.</summary>
    Kind1,

    /// <summary>Second of eight kinds.</summary>
    Kind2,

    /// <summary>Third of eight kinds.</summary>
    Kind3,

    /// <summary>Fourth of eight kinds.</summary>
    Kind4,

    /// <summary>Fifth of eight kinds.</summary>
    Kind5,

    /// <summary>Sixth of eight kinds.</summary>
    Kind6,

    /// <summary>Seventh of eight kinds.</summary>
    Kind7,

    /// <summary>Eighth of eight kinds.</summary>
    Kind8,
}
