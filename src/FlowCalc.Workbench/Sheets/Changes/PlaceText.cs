using System.Globalization;
using System.Text.Json.Nodes;
using FlowCalc.Layouts;
using UnitsNet;

namespace FlowCalc.Workbench.Sheets.Changes;

/// <summary>Lengths and places as a document says them, to a tenth of a millimetre.</summary>
static class PlaceText
{
    const int Decimals = 4;

    const double PerMetre = 1e4;

    /// <summary>A length in metres.</summary>
    public static string Of(Length length) => Math.Round(length.Meters, Decimals).ToString("0.####", CultureInfo.InvariantCulture) + " m";

    /// <summary>A length in metres, never longer than it is.</summary>
    public static string AtMost(Length length) => Of(Length.FromMeters(Math.Floor(length.Meters * PerMetre) / PerMetre));

    /// <summary>A length as it is read again from its text.</summary>
    public static Length Rounded(Length length) => Length.FromMeters(Math.Round(length.Meters, Decimals));

    /// <summary>A place as a list of three lengths.</summary>
    public static JsonArray Of(Place place) => [Of(place.X), Of(place.Y), Of(place.Z)];

    /// <summary>A place moved.</summary>
    public static Place Moved(this Place place, double x, double y, double z) => new(place.X + Length.FromMeters(x), place.Y + Length.FromMeters(y), place.Z + Length.FromMeters(z));

    /// <summary>The way from place to place, m.</summary>
    public static Direction Between(Place from, Place to) => new((to.X - from.X).Meters, (to.Y - from.Y).Meters, (to.Z - from.Z).Meters);
}
