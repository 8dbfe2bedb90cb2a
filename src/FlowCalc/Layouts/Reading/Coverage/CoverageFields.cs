namespace FlowCalc.Layouts.Reading.Coverage;

/// <summary>The members of the coverage.</summary>
enum CoverageField
{
    Surfaces,
    Targets,
    Persons,
    Bodies,
    Note,
}

/// <summary>The members of a surface.</summary>
enum SurfaceField
{
    Zone,
    Corner,
    Edges,
    Corners,
    Faces,
    Note,
}

/// <summary>The members of a target or a person.</summary>
enum TargetField
{
    Zone,
    At,
    Note,
}

/// <summary>The members of a body.</summary>
enum BodyField
{
    From,
    To,
    Note,
}

/// <summary>The members of a spray.</summary>
enum SprayField
{
    Angle,
    Range,
    Note,
}

/// <summary>The members of an air bottle.</summary>
enum AirBottleField
{
    Volume,
    Pressure,
    Note,
}
