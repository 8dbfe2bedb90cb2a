using FlowCalc.Agents;
using FlowCalc.Bottles;
using FlowCalc.Discharge;
using FlowCalc.Losses;
using FlowCalc.Networks;

namespace FlowCalc.Tests.Properties.Discharge;

/// <summary>What holds for the discharge of every gas and liquefied gas, through a line with ten nozzles.</summary>
public sealed class ExpandingDischargeLaws
{
    const double Ambient = 101_325;
    const double BottleVolume = 0.01;

    /// <summary>Agent, fill kg/m³, charge bar gauge (0 without nitrogen), °C.</summary>
    public static TheoryData<string, double, double, double> Bottles => new()
    {
        { "carbon-dioxide", 680, 0, 20 },
        { "carbon-dioxide", 680, 0, 60 },
        { "carbon-dioxide", 680, 0, -20 },
        { "HFC-23", 860, 0, 20 },
        { "HFC-23", 700, 0, -20 },
        { "nitrogen", 223, 0, 15 },
        { "argon", 356, 0, 15 },
        { "IG-55", 290, 0, 60 },
        { "IG-541", 260, 0, -20 },
        { "HFC-227ea", 1100, 25, 20 },
        { "HFC-227ea", 1000, 42, 50 },
        { "HFC-125", 800, 25, 20 },
        { "HFC-236fa", 1000, 25, 0 },
        { "FK-5-1-12", 1200, 42, 20 },
        { "FK-5-1-12", 1300, 25, -20 },
    };

    [Theory]
    [MemberData(nameof(Bottles))]
    public void The_books_close_and_every_model_comes_to_an_end(string id, double fill, double charge, double celsius)
    {
        foreach (var model in Enum.GetValues<NozzleModel>())
        {
            var course = Run(Bottle(id, fill, charge, celsius, 0.3), model, isUpright: true);
            Assert.True(course.Failure is null, $"{model}: {course.Failure}");
            Assert.InRange(course.MassDefect, 0, 1e-9);
            Assert.InRange(course.Delivered.Sum() / (fill * BottleVolume), charge > 0 ? 0.9 : 0.7, 1);
            Assert.All(course.Arrival, time => Assert.InRange(time, 0, course.End));
            // The last nozzle never gets more than the first, nor before it.
            Assert.True(course.Share(9) <= course.Share(0));
            Assert.True(course.Arrival[9] >= course.Arrival[0]);
        }
    }

    [Theory]
    [MemberData(nameof(Bottles))]
    public void The_more_an_agent_boils_in_its_nozzles_the_longer_it_takes(string id, double fill, double charge, double celsius)
    {
        double Time(NozzleModel model) => Run(Bottle(id, fill, charge, celsius, 0.3), model, isUpright: true).Thresholds[0];
        var isCliff = id == "carbon-dioxide" && celsius == 60;
        var (equilibrium, delayed, frozen) = (Time(NozzleModel.Equilibrium), Time(NozzleModel.Delayed), isCliff ? 0 : Time(NozzleModel.Frozen));
        Assert.True(equilibrium >= delayed * 0.998 && delayed >= frozen * 0.998, $"{equilibrium} {delayed} {frozen}");
    }

    [Fact]
    public void Nitrogen_that_stays_dissolved_makes_the_discharge_slower()
    {
        double Time(double lag) => Run(Bottle("HFC-227ea", 1100, 25, 20, lag), NozzleModel.Delayed, isUpright: true).Thresholds[0];
        Assert.True(Time(double.PositiveInfinity) > Time(1) && Time(1) > Time(0));
    }

    [Fact]
    public void Shorter_steps_change_the_times_by_less_than_a_per_cent()
    {
        foreach (var bottle in (Func<IExpandingBottle>[])[() => Bottle("carbon-dioxide", 680, 0, 20, 0), () => Bottle("nitrogen", 223, 0, 15, 0), () => Bottle("HFC-227ea", 1100, 25, 20, 0.3)])
        {
            var (usual, fine) = (Run(bottle(), NozzleModel.Delayed, isUpright: true), Run(bottle(), NozzleModel.Delayed, isUpright: true, largestPart: 0.008));
            Assert.Equal(fine.Thresholds[0], usual.Thresholds[0], tolerance: 0.01 * fine.Thresholds[0]);
            Assert.Equal(fine.Share(9), usual.Share(9), tolerance: 1e-3);
        }
    }

    [Fact]
    public void A_shut_valve_lets_nothing_out_before_it_opens()
    {
        var slow = Run(Bottle("carbon-dioxide", 680, 0, 20, 0), NozzleModel.Delayed, isUpright: true, opening: 1);
        var quick = Run(Bottle("carbon-dioxide", 680, 0, 20, 0), NozzleModel.Delayed, isUpright: true);
        Assert.InRange(slow.Thresholds[0] - quick.Thresholds[0], 0.1, 1);
        Assert.True(slow.Arrival[0] > quick.Arrival[0]);
    }

    [Fact]
    public void Carbon_dioxide_ends_at_its_triple_point_with_less_left_than_an_isothermal_bottle_would_keep()
    {
        var course = Run(Bottle("carbon-dioxide", 680, 0, 20, 0), NozzleModel.Delayed, isUpright: true);
        Assert.Equal(StopReason.TriplePoint, course.Reason);
        // ρ_v·V/m of saturated vapour at 20 °C: 28.6 %.
        Assert.InRange(course.LeftInBottle / 6.8, 0.005, 0.286);
    }

    [Fact]
    public void Drawn_from_the_gas_carbon_dioxide_leaves_much_of_its_charge_behind()
    {
        // In open experiments (Vaillant et al. 2021, second-hand) spheres that let gas out kept a quarter to a half of their charge, as solid.
        var course = Run(Bottle("carbon-dioxide", 680, 0, -20, 0), NozzleModel.Delayed, isUpright: false);
        Assert.Null(course.Failure);
        Assert.Equal(StopReason.TriplePoint, course.Reason);
        Assert.InRange(course.LeftInBottle / 6.8, 0.25, 0.8);
    }

    static IExpandingBottle Bottle(string id, double fill, double charge, double celsius, double lag)
    {
        var (fluid, kelvin) = (Fluid.Of(id), 273.15 + celsius);
        var heat = new ShellHeat { Area = 0.25, Capacity = 5_000 };
        if (charge == 0) return new PureBottle(fluid, BottleVolume, fill * BottleVolume, kelvin, heat);
        var model = new NitrogenEquilibrium(fluid, NitrogenSolubility.Of(id)!);
        var charged = model.Charge(BottleVolume, fill * BottleVolume, 293.15, charge * 1e5 + Ambient);
        var contents = model.Warmed(BottleVolume, fill * BottleVolume, charged.Nitrogen, kelvin);
        return new NitrogenBottle(fluid, NitrogenSolubility.Of(id)!, BottleVolume, fill * BottleVolume, contents.NitrogenInLiquid, contents.NitrogenInGas, kelvin, lag, heat);
    }

    static DischargeCourse Run(IExpandingBottle bottle, NozzleModel model, bool isUpright, double largestPart = 0.02, double opening = 0)
    {
        var builder = new NetworkBuilder(21);
        List<double> area = [], volume = [];
        int Add(int parent, double bore, double length)
        {
            var disc = Math.PI / 4 * bore * bore;
            area.Add(disc);
            volume.Add(disc * length);
            return builder.AddRun(parent, new(bore, length, 1e-3, 0.02 * length, 1.5 * Resistance.PerCoefficient(bore)));
        }

        var at = Add(-1, 0.012, 0.5);
        for (var i = 0; i < 10; i++)
        {
            if (i < 9) at = Add(at, 0.012 - 0.0005 * i, 0.6);
            builder.AddNozzle(Add(at, 0.006, 0.8), Orifice.EffectiveArea(0.002, 0.8));
        }
        var isCarbonDioxide = bottle is PureBottle { Fluid.Id: "carbon-dioxide" };
        var course = ExpandingRun.Of(new ExpandingProblem
        {
            Network = builder.Build(),
            Volume = [.. volume],
            Area = [.. area],
            Ambient = Ambient,
            Bottle = bottle,
            FloorPressure = isCarbonDioxide ? 517_950 : 0,
            Thresholds = [0.5 * bottle.Charge],
            VolumeLeft = isUpright ? 1e-5 : 1,
            Nozzles = model,
            LargestPart = largestPart,
            OpeningTime = opening,
            ValveResistance = Resistance.PerCoefficient(0.012),
        }, TestContext.Current.CancellationToken);
        return course;
    }
}
