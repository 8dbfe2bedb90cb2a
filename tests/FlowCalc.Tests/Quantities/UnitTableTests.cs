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
    [InlineData(QuantityKind.Area, "m2 cm2 mm2 m² cm² mm² m^2")]
    [InlineData(QuantityKind.Volume, "m3 L mL in3 ft3 m³ in³ ft³")]
    [InlineData(QuantityKind.Pressure, "bar mbar Pa kPa MPa psi barg mbarg Pag kPag MPag psig bar(g) mbar(g) Pa(g) kPa(g) MPa(g) psi(g) bara mbara Paa kPaa MPaa psia bar(a) mbar(a) Pa(a) kPa(a) MPa(a) psi(a)")]
    [InlineData(QuantityKind.Mass, "kg g lb")]
    [InlineData(QuantityKind.Density, "kg/m3 kg/m³ kg/L g/cm3 g/cm³ lb/ft3 lb/ft³")]
    [InlineData(QuantityKind.VolumeFlow, "m3/s m³/s m3/h m³/h L/s L/min mL/s")]
    [InlineData(QuantityKind.MassFlow, "kg/s kg/min g/s lb/s lb/min")]
    [InlineData(QuantityKind.KFactor, "L/min/bar^0.5 L/min/√bar")]
    [InlineData(QuantityKind.FlowCoefficient, "m3/h m³/h Cv")]
    [InlineData(QuantityKind.Viscosity, "Pa·s Pa.s mPa·s mPa.s cP")]
    [InlineData(QuantityKind.Temperature, "°C degC °F degF K")]
    [InlineData(QuantityKind.Time, "s ms min")]
    [InlineData(QuantityKind.Angle, "° deg rad")]
    [InlineData(QuantityKind.Force, "N kN lbf")]
    [InlineData(QuantityKind.Current, "A mA")]
    [InlineData(QuantityKind.Voltage, "V")]
    [InlineData(QuantityKind.Resistance, "ohm \u03A9 \u2126 mohm")]
    [InlineData(QuantityKind.Speed, "m/s ft/s")]
    [InlineData(QuantityKind.Acceleration, "m/s2 m/s²")]
    [InlineData(QuantityKind.Stress, "MPa N/mm2 N/mm² GPa Pa psi ksi")]
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
    public void A_gallon_that_says_whose_is_read(string unit, QuantityKind kind)
    {
        Assert.True(QuantityReader.TryRead("1 " + unit, kind, out _, out var fault), fault);
    }

    [Fact]
    public void FittingUnits_lists_the_main_spellings()
    {
        Assert.Equal("m, cm, mm, µm, in, ft", UnitTable.FittingUnits(QuantityKind.Length));
    }
}
