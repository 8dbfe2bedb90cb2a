namespace FlowCalc.Tests.Layouts;

/// <summary>Faults of the document's own fields, of values and of what describes agent and supply.</summary>
public class DocumentFaultTests
{
    [Theory]
    [InlineData("/format", "2", "/format", "read 2: the format read here is the bare number 1")]
    [InlineData("/format", "\"1\"", "/format", "bare number 1")]
    [InlineData("/format", null, "/format", "missing")]
    [InlineData("/titel", "\"x\"", "/titel", "did you mean 'title'")]
    [InlineData("/pumps", "{}", "/pumps", "unknown field 'pumps' of a layout")]
    [InlineData("/measured", "[]", "/measured", "is an object with")]
    [InlineData("/title", "5", "/title", "read 5: a title is text")]
    [InlineData("/note", "null", "/note", "read null: a note is text")]
    [InlineData("/application", "\"aircraft\"", "/application", "motorsport, marine-engine-space, machine, electrical-cabinet")]
    [InlineData("/$schema", "7", "/$schema", "is text")]
    [InlineData("/agent", null, "/agent", "missing")]
    [InlineData("/agent", "\"watr\"", "/agent", "did you mean 'water'")]
    [InlineData("/agent", "\"HFC227ea\"", "/agent", "did you mean 'HFC-227ea'")]
    [InlineData("/agent", "12", "/agent", "an agent is an id of the catalogue")]
    [InlineData("/agent", """{ "mixture": "water-propylene-glycol" }""", "/agent/massFraction", "missing: a mass fraction, over 0 to 1")]
    [InlineData("/agent", """{ "massFraction": 0.3 }""", "/agent/mixture", "missing")]
    [InlineData("/agent", """{ "mixture": "water-glycerol", "massFraction": 0.3 }""", "/agent/mixture", "no mixture of the catalogue")]
    [InlineData("/agent", """{ "mixture": "water-propylene-glycol", "massFraction": 0.9 }""", "/agent/massFraction", "0.9")]
    [InlineData("/agent", """{ "mixture": "water-propylene-glycol", "massFraction": 0.4, "density": "1000 kg/m3" }""", "/agent/density", "follow from its mass fraction")]
    [InlineData("/agent", """{ "density": "1000 kg/m3" }""", "/agent/viscosity", "missing: a viscosity")]
    [InlineData("/agent", """{ "density": "0.1 kg/m3", "viscosity": "1 mPa·s" }""", "/agent/density", "1 to 25000 kg/m3")]
    [InlineData("/agent", """{ "density": "1000 kg/m3", "viscosity": "0 mPa·s" }""", "/agent/viscosity", "0.001 to 1000000 mPa·s")]
    [InlineData("/ambientPressure", "\"1 bar\"", "/ambientPressure", "use an absolute unit such as bara")]
    [InlineData("/ambientPressure", "\"20 bara\"", "/ambientPressure", "0.01 to 10 bar absolute")]
    [InlineData("/temperature", "\"500 °C\"", "/temperature", "-100 to 300 °C")]
    [InlineData("/temperature", "\"-5 °C\"", "/temperature", "freezes at 0 °C")]
    [InlineData("/temperature", "\"200 °C\"", "/temperature", "outside the data of Water")]
    [InlineData("/temperature", "20", "/temperature", "a bare number; temperature takes °C, °F, K")]
    [InlineData("/supply", null, "/supply", "missing")]
    [InlineData("/supply", "{}", "/supply", "neither pressure nor bottle")]
    [InlineData("/supply", "\"12 bar\"", "/supply", "a supply is an object")]
    [InlineData("/supply", """{ "pressure": "0 bar" }""", "/supply/pressure", "over the ambient pressure of 1.01325 bara")]
    [InlineData("/supply", """{ "pressure": "1 bara" }""", "/supply/pressure", "over the ambient pressure")]
    [InlineData("/supply", """{ "pressure": "1200 bar" }""", "/supply/pressure", "over 0 to 1000 bar absolute")]
    [InlineData("/supply/pressure", "\"12 bar\"", "/supply", "both pressure and bottle")]
    [InlineData("/requirement", """{ "part": 0.95, "of": "contents" }""", "/requirement/within", "missing")]
    [InlineData("/requirement", """{ "part": 1.5, "of": "contents", "within": ["0 s", "30 s"] }""", "/requirement/part", "over 0 to 1")]
    [InlineData("/requirement", """{ "part": 0.9, "of": "quantity", "within": ["0 s", "30 s"] }""", "/requirement/quantity", "missing")]
    [InlineData("/requirement", """{ "part": 0.9, "of": "contents", "quantity": "2 kg", "within": ["0 s", "30 s"] }""", "/requirement/quantity", "part of the contents")]
    [InlineData("/requirement", """{ "part": 0.9, "of": "contents", "within": ["30 s", "10 s"] }""", "/requirement/within", "below the longest")]
    [InlineData("/requirement", """{ "part": 0.9, "of": "contents", "within": ["30 s"] }""", "/requirement/within", "shortest and the longest")]
    [InlineData("/cases", """{ "temperatures": [] }""", "/cases/temperatures", "1 to 12")]
    [InlineData("/cases", """{ "temperatures": ["1 °C", "2 °C", "3 °C", "4 °C", "5 °C", "6 °C", "7 °C", "8 °C", "9 °C", "10 °C", "11 °C", "12 °C", "13 °C"] }""", "/cases/temperatures", "read 13 entries: temperatures are an array of 1 to 12")]
    [InlineData("/cases", """{ "temperatures": ["20 °C", "0 °C", "32 °F"] }""", "/cases/temperatures/2", "another case has that temperature already")]
    [InlineData("/cases", """{ "temperatures": ["-150 °C"] }""", "/cases/temperatures/0", "-100 to 300 °C")]
    [InlineData("/cases", """{ "temperatures": ["1000 K"] }""", "/cases/temperatures/0", "-100 to 300 °C")]
    [InlineData("/cases", """{ "attitudes": [] }""", "/cases/attitudes", "1 to 12")]
    [InlineData("/cases", """{ "attitudes": [{ "name": "up", "gravity": [0, 0, -1001] }] }""", "/cases/attitudes/0/gravity/2", "an acceleration in g is -1000 to 1000")]
    [InlineData("/cases", """{ "attitudes": [{ "name": "up", "gravity": [0, 1e999, -1] }] }""", "/cases/attitudes/0/gravity/1", "an acceleration in g is -1000 to 1000")]
    [InlineData("/cases", """{ "temperatures": ["20 bar"] }""", "/cases/temperatures/0", "bar is a unit of pressure")]
    [InlineData("/cases", """{ "attitudes": [{ "name": "up", "gravity": [0, 0] }] }""", "/cases/attitudes/0/gravity", "three bare numbers")]
    [InlineData("/cases", """{ "attitudes": [{ "gravity": [0, 0, -1] }] }""", "/cases/attitudes/0/name", "missing")]
    [InlineData("/cases", """{ "attitudes": [{ "name": "a", "gravity": [0, 0, 0] }, { "name": "a", "gravity": [0, 0, 1] }] }""", "/cases/attitudes/1/name", "already")]
    [InlineData("/cases", """{ "attitudes": [{ "name": "a", "gravity": [0, 0, "-1"] }] }""", "/cases/attitudes/0/gravity/2", "a bare number")]
    [InlineData("/limits", """{ "velocity-hihg": { "warn": "12 m/s" } }""", "/limits/velocity-hihg", "did you mean 'velocity-high'")]
    [InlineData("/limits", """{ "velocity-high": { "warn": 12 } }""", "/limits/velocity-high/warn", "a bare number; speed takes m/s")]
    [InlineData("/limits", """{ "starved-nozzle": { "warn": "10 bar" } }""", "/limits/starved-nozzle/warn", "a bare number")]
    [InlineData("/limits", """{ "starved-nozzle": {} }""", "/limits/starved-nozzle", "no step")]
    [InlineData("/limits", """{ "starved-nozzle": { "warn": 0.2, "fail": 0.1 } }""", "/limits/starved-nozzle", "out of order")]
    [InlineData("/limits", """{ "starved-nozzle": { "warn": -0.1 } }""", "/limits/starved-nozzle/warn", "what it measures is never under 0")]
    [InlineData("/limits", """{ "velocity-high": { "note": "-1 m/s" } }""", "/limits/velocity-high/note", "what it measures is never under 0")]
    [InlineData("/limits", """{ "bend-too-tight": { "refuse": -1 } }""", "/limits/bend-too-tight/refuse", "what it measures is never under 0")]
    [InlineData("/limits", """{ "tee-port-off-angle": { "warn": "-5 °" } }""", "/limits/tee-port-off-angle/warn", "what it measures is never under 0")]
    [InlineData("/limits", """{ "bottle-liquid-full": { "warn": -0.5 } }""", "/limits/bottle-liquid-full/warn", "what it measures is never under 0")]
    [InlineData("/limits", """{ "starved-nozzle": { "alarm": 0.2, "fail": 0.1 } }""", "/limits/starved-nozzle/alarm", "unknown field")]
    [InlineData("/model", """{ "nozzles": "thawed" }""", "/model/nozzles", "delayed, equilibrium, frozen")]
    [InlineData("/model", """{ "nitrogenLag": "solid" }""", "/model/nitrogenLag", "does not start with a number")]
    [InlineData("/model", """{ "film": 2 }""", "/model/film", "0 to 0.5")]
    [InlineData("/model", """{ "film": -0.1 }""", "/model/film", "0 to 0.5")]
    public void A_wrong_field_is_one_fault(string edit, string? value, string pointer, string words) =>
        Specimen.HasOneFault(Specimen.With((edit, value)), pointer, words);

    [Theory]
    [InlineData("\"12\"", "", "the unit is missing")]
    [InlineData("\"12,5 bar\"", "", "a comma is never guessed at")]
    [InlineData("\"12 kg\"", "", "kg is a unit of mass")]
    [InlineData("\"NaN bar\"", "", "not a finite number")]
    [InlineData("12", "", "a bare number; pressure takes bar")]
    [InlineData("true", "", "pressure is text such as")]
    [InlineData("[1]", "", "read an array")]
    [InlineData("{}", "/value", "missing: a bare number")]
    [InlineData("""{ "value": "12", "unit": "bar" }""", "/value", "the value is a bare number")]
    [InlineData("""{ "value": 12, "unit": 5 }""", "/unit", "a unit is text")]
    [InlineData("""{ "value": 12, "unit": "kg" }""", "", "kg is a unit of mass")]
    [InlineData("""{ "value": 1e999, "unit": "bar" }""", "", "not a finite number")]
    [InlineData("""{ "value": 12, "unit": "bar", "of": 1 }""", "/of", "unknown field 'of' of a quantity")]
    public void A_wrong_quantity_is_a_fault_that_names_what_fits(string value, string below, string words)
    {
        var reading = Specimen.Read(Specimen.With(("/supply", $$"""{ "pressure": {{value}} }""")));

        Assert.Contains(reading.Faults, fault => fault.Pointer == "/supply/pressure" + below && fault.Message.Contains(words, StringComparison.Ordinal));
    }

    // Frozen water, and water past its data: what becomes of these is for their cases to say.
    [Fact]
    public void Temperatures_of_cases_need_not_suit_the_agent()
    {
        var layout = Specimen.Read(Specimen.With(("/cases", """{ "temperatures": ["-40 °C", "20 °C", "250 °C"] }"""))).Layout;

        Assert.Equal([233.15, 293.15, 523.15], layout!.Cases!.Temperatures.Select(temperature => Math.Round(temperature.Kelvins, 9)));
    }

    [Theory]
    [InlineData(null, 0.1)]
    [InlineData("{}", 0.1)]
    [InlineData("""{ "film": 0 }""", 0)]
    [InlineData("""{ "film": 0.5, "nozzles": "frozen", "nitrogenLag": "frozen" }""", 0.5)]
    public void The_film_is_a_tenth_where_the_document_does_not_say(string? model, double film)
    {
        var layout = Specimen.Read(model is null ? Specimen.Json : Specimen.With(("/model", model))).Layout;

        Assert.Equal(film, layout!.Film);
    }

    [Fact]
    public void A_quantity_in_two_parts_reads_like_text()
    {
        var reading = Specimen.Read(Specimen.With(("/supply", """{ "pressure": { "unit": "bar", "value": 12.5 } }""")));

        var supply = Assert.IsType<FlowCalc.Layouts.HeldSupply>(reading.Layout?.Supply);
        Assert.Equal(12.5e5 + 101_325, supply.Pressure.Pascals, tolerance: 1e-6);
    }
}
