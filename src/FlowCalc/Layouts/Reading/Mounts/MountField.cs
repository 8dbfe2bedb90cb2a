namespace FlowCalc.Layouts.Reading.Mounts;

/// <summary>The members of a mount.</summary>
enum MountField
{
    Normal,
    X,
    BottleAt,
    CentreOfMass,
    FullMass,
    Masses,
    Bolts,
    Panel,
    Foot,
    Spacers,
    Adapter,
    Straps,
    Friction,
    Cradle,
    EndStops,
    InsideStructure,
    Loads,
    Note,
}
