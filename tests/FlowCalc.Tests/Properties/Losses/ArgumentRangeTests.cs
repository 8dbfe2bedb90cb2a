using FlowCalc.Losses;

namespace FlowCalc.Tests.Properties.Losses;

public class ArgumentRangeTests
{
    private static readonly BendShape Bend = SmoothBend.Shape(1, 3);

    public static TheoryData<string, string, Action> Refused => new()
    {
        { "friction at rest", "reynolds", () => DarcyFriction.Factor(0, 0) },
        { "friction of reverse flow", "reynolds", () => DarcyFriction.FactorWithSlope(-1, 0) },
        { "friction of no number", "reynolds", () => DarcyFriction.Factor(double.NaN, 0) },
        { "friction of infinite flow", "reynolds", () => DarcyFriction.Factor(double.PositiveInfinity, 0) },
        { "negative roughness", "relativeRoughness", () => DarcyFriction.Factor(1e4, -1e-9) },
        { "roughness above the bore", "relativeRoughness", () => DarcyFriction.Factor(1e4, 1.0001) },
        { "roughness of no number", "relativeRoughness", () => DarcyFriction.PressureGroup(1e4, double.NaN) },
        { "group of a wall rougher than the bore", "relativeRoughness", () => DarcyFriction.PressureGroup(1e4, 1.0001) },
        { "group of infinite flow", "reynolds", () => DarcyFriction.PressureGroup(double.NegativeInfinity, 0) },
        { "laminar above its limit", "reynolds", () => DarcyFriction.Laminar(2000.1) },
        { "laminar at rest", "reynolds", () => DarcyFriction.Laminar(0) },
        { "turbulent below its limit", "reynolds", () => DarcyFriction.Turbulent(3999.9, 0) },
        { "turbulent roughness", "relativeRoughness", () => DarcyFriction.TurbulentWithSlope(4000, 2) },
        { "regime of no number", "reynolds", () => DarcyFriction.Regime(double.NaN) },
        { "surge in a liquid without density", "density", () => WaveSpeed.Surge(0, 1_400, 2) },
        { "surge at no speed of sound", "waveSpeed", () => WaveSpeed.Surge(1_000, 0, 2) },
        { "surge from a flow without end", "slowed", () => WaveSpeed.Surge(1_000, 1_400, double.PositiveInfinity) },
        { "surge from a flow that speeds up", "slowed", () => WaveSpeed.Surge(1_000, 1_400, -1) },
        { "curved tube at rest", "reynolds", () => CurvedTube.Factor(0, 3) },
        { "curved tube too tight", "radiusOverBore", () => CurvedTube.Factor(100, 0.49) },
        { "Dean number of reverse flow", "reynolds", () => CurvedTube.DeanNumber(-1, 3) },
        { "Dean number of a tube too tight", "radiusOverBore", () => CurvedTube.DeanNumber(1, 0.4) },
        { "bend past a half turn", "angle", () => SmoothBend.Shape(3.15, 3) },
        { "bend of negative angle", "angle", () => SmoothBend.Shape(-0.1, 3) },
        { "bend too tight", "radiusOverBore", () => SmoothBend.Shape(1, 0.49) },
        { "bend at rest", "reynolds", () => SmoothBend.Coefficient(0, 0, Bend) },
        { "bend roughness", "relativeRoughness", () => SmoothBend.Coefficient(1, 1.1, Bend) },
        { "bend group of no number", "reynolds", () => SmoothBend.LossGroup(double.NaN, 0, Bend) },
        { "bend group roughness", "relativeRoughness", () => SmoothBend.LossGroup(1, -1, Bend) },
        { "bend group of a wall rougher than the bore", "relativeRoughness", () => SmoothBend.LossGroup(1, 1.1, Bend) },
        { "mitre past 150°", "angle", () => Mitre.Coefficient(2.62) },
        { "mitre of negative angle", "angle", () => Mitre.Coefficient(-0.01) },
        { "share above one", "branchShare", () => RunFedTee.Run(1.01, TeeBody.Smooth) },
        { "branch share above one", "branchShare", () => RunFedTee.Branch(1.01, 1, 0, TeeBody.Smooth) },
        { "share below nothing", "branchShare", () => RunFedTee.Branch(-0.01, 1, 0, TeeBody.Smooth) },
        { "branch without bore", "boreRatio", () => RunFedTee.Branch(0.5, 0, 0, TeeBody.Smooth) },
        { "edge below sharp", "edgeRadiusOverBranchBore", () => RunFedTee.Branch(0.5, 1, -0.1, TeeBody.Smooth) },
        { "tee body unknown", "body", () => RunFedTee.Run(0.5, (TeeBody)7) },
        { "bullhead body unknown", "body", () => BullheadTee.Outlet(1, (TeeBody)7) },
        { "bullhead share", "share", () => BullheadTee.Coefficient(1.1, 1, TeeBody.Smooth) },
        { "bullhead without bore", "boreRatio", () => BullheadTee.Outlet(0, TeeBody.Smooth) },
        { "leg share", "share", () => default(TeeLeg).Coefficient(double.NaN) },
        { "leg share above one", "share", () => default(TeeLeg).Coefficient(1.01) },
        { "leg own flow", "own", () => default(TeeLeg).Loss(double.NaN, 1) },
        { "leg inlet flow", "inlet", () => default(TeeLeg).Loss(1, double.PositiveInfinity) },
        { "contraction that widens", "boreRatio", () => BoreChange.SharpContraction(1.01) },
        { "contraction of negative ratio", "boreRatio", () => BoreChange.SharpContraction(-0.01) },
        { "expansion that narrows", "boreRatio", () => BoreChange.Expansion(1.01) },
        { "expansion of negative ratio", "boreRatio", () => BoreChange.Expansion(-0.01) },
        { "tight bore shut", "boreRatio", () => ReducedBore.Loss(0, 1) },
        { "tight bore wider than the tube", "boreRatio", () => ReducedBore.Loss(1.01, 1) },
        { "tight bore of negative length", "lengthOverBore", () => ReducedBore.Loss(0.5, -1) },
        { "inlet of negative wall", "wallOverBore", () => TubeInlet.Projecting(-0.01) },
        { "inlet past square", "angle", () => TubeInlet.Slanted(1.6) },
        { "inlet of no angle", "angle", () => TubeInlet.Slanted(0) },
        { "loss of no number", "coefficient", () => LossCoefficient.PressureDrop(double.NaN, 1, 1) },
        { "loss without density", "density", () => LossCoefficient.PressureDrop(1, 0, 1) },
        { "loss at no velocity known", "velocity", () => LossCoefficient.PressureDrop(1, 1, double.NaN) },
        { "basis without bore", "fromBore", () => LossCoefficient.OnBore(1, 0, 1) },
        { "basis to no bore", "toBore", () => LossCoefficient.OnBore(1, 1, -1) },
        { "basis of no number", "coefficient", () => LossCoefficient.OnBore(double.NaN, 1, 1) },
        { "Kv of nothing", "cubicMetresPerHour", () => FlowCoefficientLoss.FromCubicMetresPerHour(0) },
        { "SI Kv of nothing", "flowCoefficient", () => FlowCoefficientLoss.ToCubicMetresPerHour(-1) },
        { "valve flow of no number", "volumeFlow", () => FlowCoefficientLoss.PressureDrop(double.NaN, 1, 1) },
        { "valve without density", "density", () => FlowCoefficientLoss.PressureDrop(1, 0, 1) },
        { "shut valve", "flowCoefficient", () => FlowCoefficientLoss.PressureDrop(1, 1, 0) },
        { "shut valve's coefficient", "flowCoefficient", () => FlowCoefficientLoss.EquivalentCoefficient(0, 1) },
        { "valve without bore", "bore", () => FlowCoefficientLoss.EquivalentCoefficient(1, 0) },
        { "hole without diameter", "diameter", () => Orifice.EffectiveArea(0, 0.6) },
        { "discharge coefficient above one", "dischargeCoefficient", () => Orifice.EffectiveArea(0.001, 1.01) },
        { "discharge coefficient of nothing", "dischargeCoefficient", () => Orifice.EffectiveArea(0.001, 0) },
        { "no holes", "count", () => Orifice.EffectiveArea(0.001, 0.6, 0) },
        { "orifice pressure of no number", "pressureDrop", () => Orifice.VolumeFlow(double.NaN, 1, 1) },
        { "orifice without density", "density", () => Orifice.VolumeFlow(1, 0, 1) },
        { "orifice without area", "effectiveArea", () => Orifice.VolumeFlow(1, 1, 0) },
        { "orifice flow of no number", "volumeFlow", () => Orifice.PressureDrop(double.NaN, 1, 1) },
        { "orifice pressure without density", "density", () => Orifice.PressureDrop(1, -1, 1) },
        { "orifice pressure without area", "effectiveArea", () => Orifice.PressureDrop(1, 1, 0) },
        { "K-factor of nothing", "kFactor", () => KFactor.ToEffectiveArea(0) },
        { "K-factor of no area", "effectiveArea", () => KFactor.FromEffectiveArea(0) },
        { "K-factor of no litres", "litresPerMinute", () => KFactor.FromLitresPerMinute(0) },
        { "K-factor to litres", "kFactor", () => KFactor.ToLitresPerMinute(double.NaN) },
        { "hole too slow", "reynolds", () => Lichtarowicz.DischargeCoefficient(9.9, 4) },
        { "hole too short", "lengthOverDiameter", () => Lichtarowicz.DischargeCoefficient(1e4, 1.9) },
        { "hole too long", "lengthOverDiameter", () => Lichtarowicz.UltimateDischargeCoefficient(10.1) },
        { "rise without density", "density", () => HydrostaticRise.PressureDrop(0, 1) },
        { "rise of no number", "rise", () => HydrostaticRise.PressureDrop(1, double.NaN) },
    };

    [Theory]
    [MemberData(nameof(Refused), DisableDiscoveryEnumeration = true)]
    public void Argument_outside_its_range_is_refused_by_name(string what, string argument, Action call)
    {
        var refusal = Assert.Throws<ArgumentOutOfRangeException>(call);

        Assert.True(argument == refusal.ParamName, $"{what}: named {refusal.ParamName}");
    }

    [Fact]
    public void Limits_themselves_are_accepted()
    {
        Assert.True(DarcyFriction.Laminar(2000) > 0);
        Assert.True(DarcyFriction.Turbulent(4000, 1) > 0);
        Assert.True(DarcyFriction.PressureGroup(1e5, 1).Group > 0);
        Assert.True(CurvedTube.Factor(100, 0.5) > 0);
        Assert.True(SmoothBend.Coefficient(1e5, 1, SmoothBend.Shape(Math.PI, 0.5)) > 0);
        Assert.True(Mitre.Coefficient(150 * Math.PI / 180) > 0);
        Assert.True(Lichtarowicz.DischargeCoefficient(10, 10) > 0);
        Assert.True(TubeInlet.Slanted(Math.PI / 2) > 0);
    }
}
