using System.Collections.Immutable;
using System.Globalization;
using FlowCalc.Agents;
using FlowCalc.Layouts;
using FlowCalc.Limits;
using UnitsNet;

namespace FlowCalc.Upkeep;

/// <summary>Works out dates, weight and gauge of a layout's bottle on a day that is given, never on the machine's.</summary>
public static class UpkeepCalculation
{
    /// <summary>Works it out.</summary>
    /// <param name="layout">The layout; it has a service.</param>
    /// <param name="today">The day that is asked for.</param>
    /// <param name="temperature">Temperature at which the gauge is to be told; null for none.</param>
    /// <returns>The result. Without a bottle neither gauge nor weight.</returns>
    /// <exception cref="ArgumentException">The layout has no service, or a limit that cannot be stated.</exception>
    public static UpkeepResult Of(Layout layout, DateOnly today, Temperature? temperature = null)
    {
        ArgumentNullException.ThrowIfNull(layout);
        if (layout.Service is not { } book) throw new ArgumentException("The layout has no service.", nameof(layout));

        var usual = UsualRule.Of(layout.Application);
        var assumptions = ImmutableArray.CreateBuilder<Assumption>();
        var dates = ImmutableArray.CreateBuilder<DueDate>();
        foreach (var one in usual)
        {
            if (book.Rules.Any(rule => rule.Name == one.Rule.Name)) continue;
            dates.Add(Due(book, one.Rule, today, isStated: false, one.Source));
            assumptions.Add(new($"/service/rules/{one.Rule.Name}", string.Create(CultureInfo.InvariantCulture, $"{one.Rule.Months} months"), one.Source));
        }
        foreach (var rule in book.Rules) dates.Add(Due(book, rule, today, isStated: true, DefaultLimits.StatedInTheDocument));

        var bottle = (layout.Supply as BottleSupply)?.Bottle;
        var expected = bottle is not null && temperature is { } asked ? RestPressure.Of(layout.Agent, bottle, asked) : null;
        var ambient = layout.AmbientPressure;
        var gauge = bottle is not null && book.Gauge is { Reading: { } reading, Temperature: { } warm } ? Check(reading, RestPressure.Of(layout.Agent, bottle, warm), ambient) : null;
        return new(
            today, dates.ToImmutable(), expected, Lowest(layout, expected, ambient), gauge, bottle is not null && book.Weighing is { } weighing ? WeightCheck.Of(bottle, weighing) : null, assumptions.ToImmutable());
    }

    static DueDate Due(ServiceBook book, ServiceRule rule, DateOnly today, bool isStated, string source)
    {
        var counted = rule.Basis switch
        {
            DateBasis.Own => rule.From,
            DateBasis.LastService => book.LastService ?? book.Manufactured,
            DateBasis.LastTest => book.LastTest ?? book.Manufactured,
            _ => book.Manufactured,
        };
        DateOnly? due = counted is { } from ? DueDate.After(from.Day, rule.Months) : null;
        return new(rule, counted, due, due?.DayNumber - today.DayNumber, isStated, source);
    }

    static GaugeCheck Check(Pressure reading, RestPressure expected, Pressure ambient) =>
        new(reading, expected, expected.Pressure is { } full && full > ambient ? GaugeCheck.Loss((reading - ambient).Pascals, (full - ambient).Pascals) : null);

    /// <summary>Code of the limit on what the gauge of an agent tells to be lost; null for a liquefied gas without nitrogen, whose pressure says nothing of its fill.</summary>
    internal static string? LossLimit(AgentKind kind) => kind switch
    {
        AgentKind.LiquefiedGas => null,
        AgentKind.InertGas => "gas-lost",
        _ => "pressure-lost",
    };

    static Pressure? Lowest(Layout layout, RestPressure? expected, Pressure ambient)
    {
        if (expected?.Pressure is not { } full || LossLimit(layout.Agent.Kind) is not { } code) return null;
        var limit = DefaultLimits.For(layout.Limits, LimitUse.Upkeep).Single(one => one.Code == code);
        return (limit.Fail ?? limit.Warn ?? limit.Note)?.Si is { } part ? ambient + (full - ambient) * (1 - part) : null;
    }
}
