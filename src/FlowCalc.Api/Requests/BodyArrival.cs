namespace FlowCalc.Api.Requests;

/// <summary>How a body arrived.</summary>
internal enum BodyArrival
{
    /// <summary>All of it is there.</summary>
    Whole,

    /// <summary>It is larger than the service takes.</summary>
    TooLarge,

    /// <summary>Its time was over before all of it was there.</summary>
    Late,

    /// <summary>Bodies and answers of all callers hold as much as they may.</summary>
    NoRoom,
}
