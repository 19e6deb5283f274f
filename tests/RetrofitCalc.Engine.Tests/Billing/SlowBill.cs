using NodaTime;
using RetrofitCalc.Engine.Operation;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Tests.Billing;

/// <summary>A line of a bill made by hand.</summary>
internal sealed record SlowLine(string Name, double Quantity, string Unit, double UnitPrice, double Amount);

/// <summary>Bills by brute force: every minute is looked at, every rule is a plain "if". Shares no billing code with the engine, only its input types.</summary>
internal sealed class SlowBill(Tariff tariff, double powerFactor, IReadOnlyList<SlowMonth> months)
{
    public IReadOnlyList<SlowLine> Lines(int month)
    {
        var (here, billed, lines) = (months[month], Billed(month), new List<(string Charge, SlowLine Line)>());
        foreach (var charge in tariff.Fixed)
            lines.Add(Line(charge.Name, charge.Name, charge.Per == ChargedPer.Day ? here.Days : 1, charge.Per == ChargedPer.Day ? "day" : "month", charge.Amount.Units));
        foreach (var (i, charge) in tariff.Energy.Index())
            if (here.Energy[i] is { } kilowattHours)
                lines.AddRange(Blocks(charge.Name, kilowattHours, "kWh",
                    [.. charge.Blocks.Select(block => (block.UpTo?.KilowattHours * Size(charge, here, billed) * Share(here.EnergyDays[i], here), block.Price.PerKilowattHour))]));
        foreach (var (i, adjustment) in tariff.Adjustments.Index())
            if (here.Adjustments[i] is { } kilowattHours)
                lines.Add(Line(adjustment.Name, adjustment.Name, kilowattHours, "kWh", adjustment.Prices[adjustment.Prices.Count == 1 ? 0 : here.Name.Month - 1].PerKilowattHour));
        foreach (var (i, charge) in tariff.Demand.Index())
            if (billed[i] is { } demand)
                lines.AddRange(Blocks(charge.Name, demand, Applies(charge) && tariff.PowerFactor is BilledInKilovoltAmperes ? "kVA" : "kW",
                    [.. charge.Blocks.Select(block => ((double?)block.UpTo.Kilowatts, block.Price.PerKilowatt)).Append((null, charge.Price.PerKilowatt))
                        .Select(block => (block.Item1, block.Item2 * Share(here.DemandDays[i], here)))]));
        lines.AddRange(Reactive(here));
        if (tariff.LoadFactorCredit is { } credit && DemandOf(credit.Demand, billed) is > 0 and var kilowatts
            && Math.Floor(Math.Round(here.Energy.Sum(each => each ?? 0) / kilowatts - credit.AboveHours, 9)) is > 0 and var hours)
            lines.Add(Line("", credit.Name, hours * kilowatts, "h·kW", -credit.PricePerKilowatt.PerKilowatt));
        var before = lines.Sum(each => each.Line.Amount);
        if (tariff.MinimumBill is { } minimum && Round(minimum.Units - before) is > 0 and var missing)
            lines.Add(Line("", "Minimum bill", missing, tariff.Currency, 1));
        var untaxed = lines.ToList();
        foreach (var tax in tariff.Taxes)
            lines.Add(Line("", tax.Name, untaxed.Where(each => tax.On.Count == 0 || tax.On.Contains(each.Charge)).Sum(each => each.Line.Amount), tariff.Currency, tax.Rate));
        return [.. lines.Select(each => each.Line)];
    }

    private double?[] Billed(int month) => [.. tariff.Demand.Select((charge, i) =>
    {
        if (months[month].Peaks[i] is not { } demand)
            return (double?)null;
        for (var back = 1; charge.Ratchet is { } ratchet && back <= Math.Min(ratchet.Months, months.Count - 1); back++)
        {
            var earlier = months[(month - back + months.Count) % months.Count];
            if (ratchet.PeakMonths.Count > 0 && !ratchet.PeakMonths.Contains(earlier.Name.Month))
                continue;
            var peak = ratchet.AcrossCharges ? earlier.Peaks.Max() : earlier.Peaks[i];
            demand = Math.Max(demand, (peak ?? 0) * ratchet.Share);
        }
        if (Applies(charge))
            demand *= tariff.PowerFactor switch
            {
                BilledInKilovoltAmperes => 1 / powerFactor,
                TargetPowerFactor clause when powerFactor < clause.Target => clause.Target / powerFactor,
                AddedPerPoint clause when powerFactor < clause.Threshold => 1 + (clause.Threshold - powerFactor) * 100 * clause.SharePerPoint,
                _ => 1,
            };
        if (charge.Rounding is { } rounding)
        {
            var steps = Math.Round(demand / rounding.Step.Kilowatts, 9);
            demand = rounding.Step.Kilowatts * (rounding.Direction switch
            {
                RoundingDirection.Up => Math.Ceiling(steps),
                RoundingDirection.Down => Math.Floor(steps),
                _ => Math.Floor(steps + 0.5),
            });
        }
        return charge.Minimum is { } minimum ? Math.Max(demand, minimum.Kilowatts) : demand;
    })];

    private bool Applies(DemandCharge charge) => tariff.PowerFactor is { } clause && (clause.On.Count == 0 || clause.On.Contains(charge.Name));

    private IEnumerable<(string, SlowLine)> Reactive(SlowMonth here)
    {
        if (tariff.PowerFactor is not ReactiveAboveShare clause)
            yield break;
        var named = tariff.Demand.Index().Where(each => Applies(each.Item) && here.Peaks[each.Index] is not null).Select(each => each.Index).ToList();
        if (named.Count == 0)
            yield break;
        var kilovarsPerKilowatt = Math.Sqrt(1 / (powerFactor * powerFactor) - 1);
        yield return Line("Reactive demand", "Reactive demand", named.Max(i => here.Peaks[i]!.Value) * Math.Max(0, kilovarsPerKilowatt - clause.FreeShare), "kvar",
            clause.PricePerKilovar.PerKilowatt * Math.Min(1, named.Sum(i => Share(here.DemandDays[i], here))));
    }

    private double Size(EnergyCharge charge, SlowMonth here, double?[] billed) => charge.BlockUnit switch
    {
        BlockUnit.PerDay => here.Days,
        BlockUnit.PerKilowatt => DemandOf(charge.BlocksByDemand, billed),
        _ => 1,
    };

    private double DemandOf(string? name, double?[] billed)
    {
        for (var i = 0; i < tariff.Demand.Count; i++)
            if (billed[i] is { } demand && (name is null || tariff.Demand[i].Name == name))
                return demand;
        return 0;
    }

    private IEnumerable<(string, SlowLine)> Blocks(string name, double quantity, string unit, (double? UpTo, double Price)[] blocks)
    {
        var below = 0.0;
        foreach (var (i, (upTo, price)) in blocks.Index())
        {
            var top = Math.Min(quantity, upTo ?? double.MaxValue);
            if (i == 0 || top > below)
                yield return Line(name, blocks.Length > 1 ? $"{name}, block {i + 1}" : name, top - below, unit, price);
            below = Math.Max(below, top);
        }
    }

    private static double Share(int days, SlowMonth here) => (double)days / here.Days;

    private (string, SlowLine) Line(string charge, string name, double quantity, string unit, double price) =>
        (charge, new(name, quantity, unit, price, Round(quantity * price)));

    private double Round(double amount) => (double)Math.Round((decimal)amount, tariff.AmountDecimals, MidpointRounding.AwayFromZero);
}

/// <summary>What the minutes of one billing month add up to.</summary>
/// <param name="Name">Calendar month it is called after.</param>
/// <param name="Days">Days.</param>
internal sealed record SlowMonth(YearMonth Name, int Days)
{
    public required double?[] Energy { get; init; }
    public required double?[] Adjustments { get; init; }
    public required double?[] Peaks { get; init; }
    public required int[] EnergyDays { get; init; }
    public required int[] DemandDays { get; init; }

    /// <summary>Looks at every minute between two days.</summary>
    public static SlowMonth Of(Tariff tariff, BillingMonth month, DateTimeZone zone, Func<Instant, double> kilowatts)
    {
        var found = new SlowMonth(month.Name, Period.DaysBetween(month.First, month.Last) + 1)
        {
            Energy = new double?[tariff.Energy.Count], Adjustments = new double?[tariff.Adjustments.Count], Peaks = new double?[tariff.Demand.Count],
            EnergyDays = new int[tariff.Energy.Count], DemandDays = new int[tariff.Demand.Count],
        };
        var windows = tariff.Demand.Select(_ => new List<double>()).ToArray();
        for (var day = month.First; day <= month.Last; day = day.PlusDays(1))
            found.Look(new(tariff, day, month), zone, kilowatts, windows);
        return found;
    }

    private void Look(SlowDay day, DateTimeZone zone, Func<Instant, double> kilowatts, List<double>[] windows)
    {
        for (var i = 0; i < EnergyDays.Length; i++) EnergyDays[i] += day.Energy[i] ? 1 : 0;
        for (var i = 0; i < DemandDays.Length; i++) DemandDays[i] += day.Demand[i] ? 1 : 0;
        var end = zone.AtStartOfDay(day.Date.PlusDays(1)).ToInstant();
        // Clocks change on whole quarters of an hour, so wall time is asked for once a quarter.
        for (var quarter = zone.AtStartOfDay(day.Date).ToInstant(); quarter < end; quarter += Duration.FromMinutes(15))
        {
            var (wall, load) = (quarter.InZone(zone).TimeOfDay, kilowatts(quarter));
            for (var minute = 0; minute < 15; minute++)
                Look(day, wall.Hour * 60 + wall.Minute + minute, load, windows);
        }
    }

    private void Look(SlowDay day, int minuteOfDay, double load, List<double>[] windows)
    {
        var charge = day.ChargeAt(minuteOfDay);
        Energy[charge] = (Energy[charge] ?? 0) + load / 60;
        for (var i = 0; i < Adjustments.Length; i++)
            if (day.Adjusts(i, minuteOfDay))
                Adjustments[i] = (Adjustments[i] ?? 0) + load / 60;
        for (var i = 0; i < Peaks.Length; i++)
        {
            if (minuteOfDay % day.Tariff.Demand[i].WindowMinutes == 0) windows[i].Clear();
            windows[i].Add(load);
            if (windows[i].Count == day.Tariff.Demand[i].WindowMinutes && day.Counts(i, minuteOfDay))
                Peaks[i] = Math.Max(Peaks[i] ?? 0, windows[i].Average());
        }
    }
}
