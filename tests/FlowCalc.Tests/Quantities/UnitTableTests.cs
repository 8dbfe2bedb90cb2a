using FlowCalc.Quantities;

namespace FlowCalc.Tests.Quantities;

public sealed class UnitTableTests
{
    [Fact]
    public void Every_spelling_is_read_as_its_own_row_and_no_other()
    {
        foreach (var entry in UnitTable.All)
            foreach (var spelling in entry.Twins.Prepend(entry.Symbol))
            {
                Assert.True(QuantityReader.TryRead("3 " + spelling, entry.Kind, out var reading, out var fault), fault);

                Assert.Equal(spelling, reading.Unit);
                Assert.Equal(entry.ToSi(3.0), reading.Si);
                Assert.Equal(entry.IsAbsolute == false, reading.IsGauge);
            }
    }

    [Fact]
    public void No_spelling_occurs_twice_within_a_kind()
    {
        foreach (var kind in Enum.GetValues<QuantityKind>())
        {
            var spellings = UnitTable.Of(kind).SelectMany(entry => entry.Twins.Prepend(entry.Symbol)).ToList();

            Assert.Equal(spellings.Count, spellings.Distinct(StringComparer.Ordinal).Count());
            Assert.NotEmpty(spellings);
        }
    }

    [Fact]
    public void A_spelling_twice_within_a_kind_stops_the_table()
    {
        var row = UnitTable.All[0];

        Assert.Throws<InvalidOperationException>(() => new SpellingIndex([row, row]));
    }

    [Fact]
    public void Only_pressures_say_gauge_or_absolute()
    {
        Assert.All(UnitTable.All, entry => Assert.Equal(entry.Kind == QuantityKind.Pressure, entry.IsAbsolute.HasValue));
    }

    [Fact]
    public void Only_temperatures_have_an_offset()
    {
        Assert.All(UnitTable.All, entry => Assert.True(entry.Offset == 0.0 || entry.Kind == QuantityKind.Temperature));
    }

    [Theory]
    [InlineData(QuantityKind.Length, "m cm mm \u00B5m \u03BCm um in ft")]
    [InlineData(QuantityKind.Area, "m2 cm2 mm2 in2 ft2 m² cm² mm² in² ft² m^2 cm^2 mm^2 in^2 ft^2")]
    [InlineData(QuantityKind.Volume, "m3 L l mL ml in3 ft3 m³ in³ ft³ m^3")]
    [InlineData(QuantityKind.Pressure, "bar mbar Pa kPa MPa psi barg mbarg Pag kPag MPag psig bar(g) mbar(g) Pa(g) kPa(g) MPa(g) psi(g) bara mbara Paa kPaa MPaa psia bar(a) mbar(a) Pa(a) kPa(a) MPa(a) psi(a)")]
    [InlineData(QuantityKind.Mass, "kg g lb")]
    [InlineData(QuantityKind.Density, "kg/m3 kg/m³ kg/m^3 kg/L kg/l g/cm3 g/cm³ lb/ft3 lb/ft³")]
    [InlineData(QuantityKind.VolumeFlow, "m3/s m³/s m3/h m³/h L/s l/s L/min l/min mL/s ml/s")]
    [InlineData(QuantityKind.MassFlow, "kg/s kg/min g/s lb/s lb/min")]
    [InlineData(QuantityKind.KFactor, "L/min/bar^0.5 L/min/√bar l/min/bar^0.5 l/min/√bar m3/s/Pa^0.5 m3/s/√Pa")]
    [InlineData(QuantityKind.FlowCoefficient, "m3/h m³/h Kv Cv m3/s/Pa^0.5 m3/s/√Pa")]
    [InlineData(QuantityKind.Viscosity, "Pa·s Pa.s Pa\u22C5s mPa·s mPa.s mPa\u22C5s cP")]
    [InlineData(QuantityKind.Temperature, "°C degC \u2103 °F degF \u2109 K")]
    [InlineData(QuantityKind.Time, "s ms min h")]
    [InlineData(QuantityKind.Angle, "° deg rad")]
    [InlineData(QuantityKind.Force, "N kN lbf")]
    [InlineData(QuantityKind.Current, "A mA")]
    [InlineData(QuantityKind.Voltage, "V mV")]
    [InlineData(QuantityKind.Resistance, "ohm \u03A9 \u2126 mohm m\u03A9 m\u2126 kohm k\u03A9 k\u2126")]
    [InlineData(QuantityKind.Speed, "m/s km/h ft/s mph mi/h")]
    [InlineData(QuantityKind.Acceleration, "m/s2 m/s² ft/s2 ft/s² g gn")]
    [InlineData(QuantityKind.Stress, "MPa N/mm2 N/mm² GPa kN/mm2 kN/mm² Pa N/m2 N/m² psi ksi")]
    [InlineData(QuantityKind.Capacitance, "F mF \u00B5F \u03BCF uF")]
    [InlineData(QuantityKind.Energy, "J mJ")]
    [InlineData(QuantityKind.WettingRate, "m3/s/m2 m³/s/m² L/min/m2 l/min/m2 L/min/m²")]
    public void The_promised_spellings_are_read(QuantityKind kind, string spellings)
    {
        foreach (var spelling in spellings.Split(' '))
            Assert.True(QuantityReader.TryRead("1 " + spelling, kind, out _, out var fault), fault);
    }

    [Theory]
    [InlineData("US gal", QuantityKind.Volume)]
    [InlineData("US gal/min", QuantityKind.VolumeFlow)]
    [InlineData("US gal/min/psi^0.5", QuantityKind.KFactor)]
    [InlineData("US gal/min/√psi", QuantityKind.KFactor)]
    [InlineData("US gpm", QuantityKind.VolumeFlow)]
    [InlineData("US gpm/psi^0.5", QuantityKind.KFactor)]
    [InlineData("US gpm/√psi", QuantityKind.KFactor)]
    [InlineData("US gal/min/ft2", QuantityKind.WettingRate)]
    [InlineData("US gpm/ft2", QuantityKind.WettingRate)]
    public void A_gallon_that_says_whose_is_read(string unit, QuantityKind kind)
    {
        Assert.True(QuantityReader.TryRead("1 " + unit, kind, out _, out var fault), fault);
    }

    [Fact]
    public void FittingUnits_lists_the_main_spellings()
    {
        Assert.Equal("m, cm, mm, µm, in, ft", UnitTable.FittingUnits(QuantityKind.Length));
    }

    [Fact]
    public void A_kind_that_does_not_exist_has_no_units()
    {
        var none = (QuantityKind)Enum.GetValues<QuantityKind>().Length;

        Assert.Throws<ArgumentOutOfRangeException>(() => UnitTable.Of(none));
        Assert.Throws<ArgumentOutOfRangeException>(() => UnitTable.FittingUnits(none));
    }
}
