using System.Globalization;
using FlowCalc.Agents;

namespace FlowCalc.Tests.Peers.Agents;

/// <summary>
/// Values of the same polynomials (Melinder 2010, as collected in the open CoolProp library) worked out by a separate evaluator and rounded. They check our
/// coefficients and evaluation, not the measurements behind them. A line: mixture, mass fraction, freezing point °C, then temperature °C, density
/// kg/m³ and viscosity mPa·s by turns.
/// </summary>
public class AqueousMixtureTests
{
    const string Values = """
        water-propylene-glycol 0.10 -2.9 | 0 1009.3 2.745 | 10 1008.3 1.936 | 20 1006.2 1.432 | 30 1003.2 1.105 | 40 999.4 0.884 | 50 994.9 0.728 | 60 989.8 0.614
        water-propylene-glycol 0.20 -7.2 | 0 1020.1 4.312 | 10 1017.9 2.875 | 20 1014.8 2.030 | 30 1010.9 1.508 | 40 1006.4 1.169 | 50 1001.2 0.940 | 60 995.6 0.778
        water-propylene-glycol 0.25 -9.8 | 0 1025.8 5.515 | 10 1022.9 3.558 | 20 1019.3 2.445 | 30 1014.9 1.776 | 40 1009.9 1.353 | 50 1004.4 1.073 | 60 998.4 0.878
        water-propylene-glycol 0.30 -12.8 | -10 1034.3 12.327 | 0 1031.6 7.117 | 10 1028.0 4.438 | 20 1023.8 2.965 | 30 1018.9 2.104 | 40 1013.4 1.573 | 50 1007.5 1.229 | 60 1001.2 0.995
        water-propylene-glycol 0.35 -16.3 | -10 1040.5 16.605 | 0 1037.1 9.212 | 10 1033.0 5.554 | 20 1028.2 3.607 | 30 1022.8 2.501 | 40 1016.9 1.834 | 50 1010.5 1.412 | 60 1003.8 1.129
        water-propylene-glycol 0.40 -20.6 | -20 1049.7 45.948 | -10 1046.4 22.241 | 0 1042.4 11.879 | 10 1037.6 6.935 | 20 1032.3 4.384 | 30 1026.4 2.972 | 40 1020.1 2.141 | 50 1013.3 1.623 | 60 1006.3 1.283
        water-propylene-glycol 0.45 -25.8 | -20 1055.5 63.203 | -10 1051.6 29.393 | 0 1047.0 15.171 | 10 1041.8 8.604 | 20 1036.0 5.307 | 30 1029.7 3.526 | 40 1022.9 2.497 | 50 1015.9 1.866 | 60 1008.6 1.458
        water-propylene-glycol 0.50 -32.2 | -30 1064.1 212.448 | -20 1060.4 84.739 | -10 1056.0 38.104 | 0 1050.9 19.111 | 10 1045.3 10.579 | 20 1039.1 6.394 | 30 1032.4 4.175 | 40 1025.4 2.914 | 50 1018.0 2.151 | 60 1010.5 1.661
        water-ethylene-glycol 0.10 -3.4 | 0 1013.6 2.345 | 10 1012.5 1.694 | 20 1010.6 1.275 | 30 1007.8 0.994 | 40 1004.3 0.801 | 50 1000.1 0.664 | 60 995.2 0.563
        water-ethylene-glycol 0.20 -7.9 | 0 1029.1 3.178 | 10 1026.9 2.250 | 20 1024.1 1.662 | 30 1020.6 1.276 | 40 1016.4 1.013 | 50 1011.6 0.829 | 60 1006.2 0.697
        water-ethylene-glycol 0.25 -11.0 | -10 1039.0 5.531 | 0 1037.0 3.698 | 10 1034.4 2.593 | 20 1031.0 1.899 | 30 1027.1 1.447 | 40 1022.6 1.141 | 50 1017.4 0.929 | 60 1011.8 0.777
        water-ethylene-glycol 0.30 -14.6 | -10 1047.5 6.508 | 0 1045.0 4.298 | 10 1041.8 2.983 | 20 1038.0 2.166 | 30 1033.7 1.639 | 40 1028.8 1.286 | 50 1023.4 1.041 | 60 1017.5 0.866
        water-ethylene-glycol 0.35 -18.8 | -10 1055.8 7.665 | 0 1052.8 4.994 | 10 1049.2 3.430 | 20 1045.0 2.470 | 30 1040.3 1.857 | 40 1035.1 1.449 | 50 1029.4 1.167 | 60 1023.3 0.967
        water-ethylene-glycol 0.40 -23.8 | -20 1066.7 15.001 | -10 1063.8 9.051 | 0 1060.4 5.811 | 10 1056.4 3.947 | 20 1051.9 2.819 | 30 1046.8 2.106 | 40 1041.4 1.635 | 50 1035.4 1.312 | 60 1029.1 1.082
        water-ethylene-glycol 0.45 -29.5 | -20 1074.7 18.174 | -10 1071.5 10.731 | 0 1067.7 6.778 | 10 1063.3 4.550 | 20 1058.5 3.223 | 30 1053.2 2.394 | 40 1047.5 1.851 | 50 1041.4 1.481 | 60 1034.9 1.217
        water-ethylene-glycol 0.50 -36.0 | -30 1085.1 41.774 | -20 1082.2 22.178 | -10 1078.7 12.780 | 0 1074.6 7.930 | 10 1070.0 5.257 | 20 1064.9 3.693 | 30 1059.4 2.729 | 40 1053.4 2.103 | 50 1047.1 1.678 | 60 1040.5 1.375
        water-potassium-acetate 0.10 -4.5 | 0 1055.6 2.264 | 10 1053.5 1.658 | 20 1050.9 1.278 | 30 1047.8 1.024 | 40 1044.3 0.840
        water-potassium-acetate 0.15 -7.5 | 0 1080.8 2.566 | 10 1078.3 1.882 | 20 1075.2 1.453 | 30 1071.8 1.166 | 40 1067.9 0.960
        water-potassium-acetate 0.20 -11.2 | -10 1110.3 4.292 | 0 1107.8 2.948 | 10 1104.8 2.158 | 20 1101.3 1.664 | 30 1097.5 1.334 | 40 1093.2 1.097
        water-potassium-acetate 0.25 -16.2 | -10 1139.4 5.064 | 0 1136.4 3.456 | 10 1132.9 2.518 | 20 1129.1 1.932 | 30 1124.9 1.541 | 40 1120.3 1.262
        water-potassium-acetate 0.30 -23.1 | -20 1172.2 9.917 | -10 1169.2 6.170 | 0 1165.7 4.164 | 10 1161.9 3.005 | 20 1157.7 2.287 | 30 1153.2 1.811 | 40 1148.3 1.471
        water-potassium-acetate 0.35 -31.9 | -30 1205.0 23.233 | -20 1202.1 12.776 | -10 1198.8 7.778 | 0 1195.0 5.162 | 10 1190.9 3.678 | 20 1186.3 2.770 | 30 1181.5 2.171 | 40 1176.4 1.744
        water-potassium-acetate 0.40 -42.1 | -40 1237.4 69.089 | -30 1235.0 32.160 | -20 1231.9 17.028 | -10 1228.3 10.078 | 0 1224.3 6.551 | 10 1219.8 4.596 | 20 1215.0 3.419 | 30 1209.9 2.651 | 40 1204.6 2.105
        water-potassium-formate 0.10 -4.9 | 0 1064.0 1.989 | 10 1062.3 1.500 | 20 1059.7 1.175 | 30 1056.7 0.947 | 40 1053.5 0.778
        water-potassium-formate 0.20 -11.6 | -10 1130.0 3.078 | 0 1128.0 2.249 | 10 1125.2 1.720 | 20 1122.0 1.364 | 30 1118.6 1.112 | 40 1115.2 0.924
        water-potassium-formate 0.30 -21.2 | -20 1202.5 5.268 | -10 1200.1 3.639 | 0 1197.1 2.670 | 10 1193.5 2.060 | 20 1189.7 1.655 | 30 1185.8 1.369 | 40 1181.9 1.156
        water-potassium-formate 0.40 -35.0 | -30 1279.8 10.204 | -20 1277.2 6.410 | -10 1273.9 4.377 | 0 1270.2 3.205 | 10 1266.2 2.482 | 20 1261.9 2.005 | 30 1257.4 1.667 | 40 1252.8 1.407
        water-potassium-formate 0.45 -43.9 | -40 1322.3 22.159 | -30 1319.8 12.322 | -20 1316.8 7.617 | -10 1313.4 5.150 | 0 1309.5 3.747 | 10 1305.3 2.887 | 20 1300.9 2.318 | 30 1296.2 1.908 | 40 1291.3 1.583
        water-potassium-carbonate 0.10 -3.6 | 0 1096.5 2.142 | 10 1094.2 1.614 | 20 1090.9 1.268 | 30 1086.9 1.027 | 40 1082.7 0.846
        water-potassium-carbonate 0.20 -8.8 | 0 1198.0 2.791 | 10 1194.5 2.145 | 20 1190.3 1.714 | 30 1185.6 1.405 | 40 1180.5 1.163
        water-potassium-carbonate 0.30 -18.6 | -10 1311.2 5.903 | 0 1307.7 4.245 | 10 1303.5 3.224 | 20 1298.6 2.550 | 30 1293.3 2.071 | 40 1287.7 1.702
        water-potassium-carbonate 0.35 -26.7 | -20 1372.3 12.276 | -10 1369.3 8.029 | 0 1365.4 5.643 | 10 1360.8 4.203 | 20 1355.7 3.273 | 30 1350.3 2.628 | 40 1344.6 2.146
        """;

    public static TheoryData<string> Lines => [.. Values.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Density_viscosity_and_freezing_point_agree_to_the_digits_given(string line)
    {
        var groups = line.Split('|', StringSplitOptions.TrimEntries);
        var head = groups[0].Split(' ');
        Assert.True(AgentCatalogue.TryMixture(head[0], Number(head[1]), out var agent, out var fault), fault);

        // Half a unit of the last digit, and a hair for values that sat on the edge of rounding.
        Assert.Equal(Number(head[2]), agent.FreezingPoint!.Value - 273.15, tolerance: 0.0501);
        foreach (var values in groups[1..].Select(group => group.Split(' ').Select(Number).ToArray()))
        {
            var temperature = values[0] + 273.15;
            Assert.Equal(values[1], agent.Density(temperature), tolerance: 0.0501);
            Assert.Equal(values[2], 1e3 * agent.Viscosity(temperature), tolerance: 0.000501);
        }
    }

    [Fact]
    public void Every_mixture_is_checked_at_its_weakest_and_strongest() =>
        Assert.All(AgentCatalogue.Mixtures, mixture => Assert.All([mixture.LowestMassFraction, mixture.HighestMassFraction], fraction =>
            Assert.Contains(Lines.Select(row => row.Data), line => line.StartsWith(
                string.Create(CultureInfo.InvariantCulture, $"{mixture.Id} {fraction:0.00} "), StringComparison.Ordinal))));

    static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
