namespace FlowCalc.Workbench.Sheets;

/// <summary>A sheet to begin with: a bottle, a tube and a nozzle in stock, no run yet.</summary>
public static class EmptySheet
{
    /// <summary>The name of the first tube and of the first nozzle in stock.</summary>
    public const string Tube = "tube", Nozzle = "cone";

    /// <summary>The document. Its values are a start to be replaced, and say so.</summary>
    public const string Text =
        """
        {
          "format": 1,
          "title": "New layout",
          "agent": "water",
          "temperature": "20 °C",
          "supply": {
            "bottle": {
              "note": "start values: replace them with those of your bottle",
              "volume": "4 L",
              "fill": "2.5 kg",
              "chargePressure": "14 bar",
              "cushionGas": "nitrogen"
            }
          },
          "tubes": {
            "tube": { "outsideDiameter": "8 mm", "wall": "1 mm", "minimumBendRadius": "24 mm", "note": "start values: measure the bore of yours" }
          },
          "nozzles": {
            "cone": { "orifice": { "diameter": "1.5 mm", "dischargeCoefficient": 0.8 }, "note": "start values: take those of the maker" }
          },
          "points": [
            { "id": "bottle", "kind": "supply" }
          ],
          "runs": []
        }

        """;
}
