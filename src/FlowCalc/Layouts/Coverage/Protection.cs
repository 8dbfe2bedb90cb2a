namespace FlowCalc.Layouts.Coverage;

/// <summary>How a zone is protected.</summary>
public enum Protection
{
    /// <summary>A closed space is filled to a concentration.</summary>
    Flooding,

    /// <summary>A surface or a thing is wetted or swept.</summary>
    Local,
}
