namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of a bottle and its outlet.</summary>
public class BottleFaultTests
{
    [Theory]
    [InlineData("/volume", null, "/volume", "missing: a bottle's volume, 0.001 L to 100 m3")]
    [InlineData("/volume", "\"0 L\"", "/volume", "0.001 L to 100 m3")]
    [InlineData("/volume", "\"3 L\"", "/fill", "leave no room for the cushion")]
    [InlineData("/fill", null, "/fill", "missing")]
    [InlineData("/fill", "\"3 bar\"", "/fill", "a fill is a mass, a volume or a fill density")]
    [InlineData("/fill", "\"4.1 L\"", "/fill", "leave no room for the cushion")]
    [InlineData("/fill", "\"1100 kg/m3\"", "/fill", "leave no room for the cushion")]
    [InlineData("/fill", "\"0 kg\"", "/fill", "0.001 g to 1000000 kg")]
    [InlineData("/chargePressure", null, "/chargePressure", "missing")]
    [InlineData("/chargePressure", "\"0.5 bara\"", "/chargePressure", "over the ambient pressure")]
    [InlineData("/chargeTemperature", "\"-5 °C\"", "/chargeTemperature", "freezes at 0 °C")]
    [InlineData("/count", "0", "/count", "a whole number, 1 to 10000")]
    [InlineData("/count", "1.5", "/count", "a whole number")]
    [InlineData("/count", "\"2\"", "/count", "a whole number")]
    [InlineData("/cushionGas", "\"helium\"", "/cushionGas", "nitrogen, argon, air")]
    [InlineData("/cushionHeat", "\"warm\"", "/cushionHeat", "wall, isothermal, adiabatic")]
    [InlineData("/openingTime", "\"-1 s\"", "/openingTime", "0 to 3600 s")]
    [InlineData("/workingPressure", "\"2000 bar\"", "/workingPressure", "over 0 to 1000 bar absolute")]
    [InlineData("/emptyMass", "\"-1 kg\"", "/emptyMass", "an empty mass")]
    [InlineData("/shape", """{ "diameter": "130 mm", "length": "400 mm" }""", "/shape", "differs by over 5 %")]
    [InlineData("/shape", """{ "diameter": "130 mm" }""", "/shape/length", "missing")]
    [InlineData("/axis", "[0, 0, 0]", "/axis", "no length")]
    [InlineData("/axis", "[0, \"1 m\", 0]", "/axis/1", "a bare number")]
    [InlineData("/wall", """{ "material": "steel", "thickness": "0 mm" }""", "/wall/thickness", "over 0 to 1 m")]
    [InlineData("/wall", """{ "thickness": "2 mm" }""", "/wall/material", "missing")]
    [InlineData("/color", "1", "/color", "unknown field 'color' of a bottle")]
    [InlineData("/outlet", "5", "/outlet", "an outlet is an object")]
    [InlineData("/outlet/valveKv", "\"0 m3/h\"", "/outlet/valveKv", "0.000001 to 1000000 m3/h")]
    [InlineData("/outlet/valveKv", "\"2.4 L/min\"", "/outlet/valveKv", "is a unit of volume flow")]
    [InlineData("/outlet/dipTube/bore", null, "/outlet/dipTube/bore", "missing: a bore, 0.001 mm to 1 m")]
    [InlineData("/outlet/dipTube/bore", "\"2 m\"", "/outlet/dipTube/bore", "0.001 mm to 1 m")]
    [InlineData("/outlet/dipTube/roughness", "\"1 mm\"", "/outlet/dipTube/roughness", "0 to 5 % of the bore")]
    [InlineData("/outlet/dipTube/length", null, "/outlet/dipTube/length", "missing")]
    [InlineData("/outlet/dipTube/inlet", "[\"1 mm\"]", "/outlet/dipTube/inlet", "three lengths")]
    [InlineData("/outlet/dipTube/inlet", "[\"0 mm\", \"0 mm\", \"-1 mm\"]", "/outlet/dipTube/inlet", "outside the bottle, 0.0596")]
    [InlineData("/outlet/dipTube/inlet", "[\"50 mm\", \"-50 mm\", \"10 mm\"]", "/outlet/dipTube/inlet", "taken without a shape")]
    [InlineData("/outlet/dipTube/follows", "\"yes\"", "/outlet/dipTube/follows", "true or false")]
    [InlineData("/outlet/regulator", "{}", "/outlet/regulator/setPressure", "missing")]
    [InlineData("/outlet/regulator", """{ "setPressure": "0 bar" }""", "/outlet/regulator/setPressure", "over the ambient pressure")]
    [InlineData("/outlet/restrictor", """{ "diameter": "3 mm" }""", "/outlet/restrictor/dischargeCoefficient", "missing")]
    [InlineData("/outlet/restrictor", """{ "diameter": "3 mm", "dischargeCoefficient": 1.2 }""", "/outlet/restrictor/dischargeCoefficient", "0.000001 to 1")]
    [InlineData("/outlet/burstPressure", "\"-0.5 bar\"", "/outlet/burstPressure", "over the ambient pressure")]
    public void A_wrong_bottle_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With(("/supply/bottle" + edit, value)), "/supply/bottle" + pointer, words);

    // 132 mm inside is 4 L over 292.3 mm.
    [Theory]
    [InlineData("584 mm", true)]
    [InlineData("586 mm", false)]
    [InlineData("3 m", false)]
    public void A_dip_tube_is_at_most_twice_as_long_as_the_bottle(string length, bool isSound)
    {
        var json = Specimen.With(("/supply/bottle/shape", """{ "diameter": "132 mm", "length": "292.3 mm" }"""), ("/supply/bottle/outlet/dipTube/length", $"\"{length}\""));

        if (isSound) Assert.Empty(Specimen.Read(json).Faults);
        else Specimen.HasOneFault(json, "/supply/bottle/outlet/dipTube/length", "over twice the bottle's inside length of 0.2923 m");
    }

    [Fact]
    public void A_dip_tube_of_a_bottle_without_a_shape_is_not_held_against_it() =>
        Assert.Empty(Specimen.Read(Specimen.With(("/supply/bottle/outlet/dipTube/length", "\"3 m\""))).Faults);

    // 132 mm inside and 292.3 mm long: 66 mm in radius.
    [Theory]
    [InlineData("66 mm", "0 mm", "0 mm", true)]
    [InlineData("40 mm", "-50 mm", "292.3 mm", true)]
    [InlineData("66.1 mm", "0 mm", "0 mm", false)]
    [InlineData("50 mm", "50 mm", "10 mm", false)]
    [InlineData("0 mm", "0 mm", "-0.1 mm", false)]
    [InlineData("0 mm", "0 mm", "292.4 mm", false)]
    public void An_inlet_is_inside_the_bottle(string x, string y, string z, bool isSound)
    {
        var json = Specimen.With(
            ("/supply/bottle/shape", """{ "diameter": "132 mm", "length": "292.3 mm" }"""), ("/supply/bottle/outlet/dipTube/inlet", $"""["{x}", "{y}", "{z}"]"""));

        if (isSound) Assert.Empty(Specimen.Read(json).Faults);
        else Specimen.HasOneFault(json, "/supply/bottle/outlet/dipTube/inlet", "outside the bottle");
    }

    // Water boils at 95 °C under 0.846 bar (IAPWS-95): high up, a cushion may be over the air's pressure and still too low.
    [Theory]
    [InlineData("0.85 bara", true)]
    [InlineData("0.84 bara", false)]
    public void A_cushion_holds_its_liquid_from_boiling(string pressure, bool isSound)
    {
        var json = Specimen.With(("/ambientPressure", "\"0.5 bara\""), ("/supply/bottle/chargeTemperature", "\"95 °C\""), ("/supply/bottle/chargePressure", $"\"{pressure}\""));

        if (isSound) Assert.Empty(Specimen.Read(json).Faults);
        else Specimen.HasOneFault(json, "/supply/bottle/chargePressure", "Water boils there at the charge temperature, where its vapour alone has 0.846");
    }

    [Fact]
    public void A_shape_that_does_not_agree_is_one_fault_whatever_the_dip_tube() =>
        Specimen.HasOneFault(Specimen.With(("/supply/bottle/shape", """{ "diameter": "132 mm", "length": "29.23 mm" }""")), "/supply/bottle/shape", "differs by over 5 %");

    [Theory]
    [InlineData("3 kg")]
    [InlineData("750 kg/m3")]
    [InlineData("3.00541 L")] // 3 kg at 998.2 kg/m³, IAPWS-95 at 20 °C
    public void A_fill_is_a_mass_a_density_or_a_volume(string fill)
    {
        var reading = Specimen.Read(Specimen.With(("/supply/bottle/fill", $"\"{fill}\"")));

        var supply = Assert.IsType<FlowCalc.Layouts.BottleSupply>(reading.Layout?.Supply);
        Assert.Equal(3, supply.Bottle.Fill.Kilograms, tolerance: 1e-4);
    }

    [Fact]
    public void Pressures_of_a_bottle_become_absolute_by_the_ambient_pressure()
    {
        var reading = Specimen.Read(Specimen.With(("/ambientPressure", "\"0.9 bara\""), ("/supply/bottle/workingPressure", "\"20 bar\"")));

        var bottle = Assert.IsType<FlowCalc.Layouts.BottleSupply>(reading.Layout?.Supply).Bottle;
        Assert.Equal(14.9e5, bottle.ChargePressure.Pascals, tolerance: 1e-6);
        Assert.Equal(20.9e5, bottle.WorkingPressure!.Value.Pascals, tolerance: 1e-6);
    }
}
