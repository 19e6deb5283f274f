using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Sentences about what a change does to the bill.</summary>
public static class BillWords
{
    private const double WorthSaying = 0.005;
    private const double WorthTheBoard = 0.1;
    private static readonly Money Nothing = Money.FromUnits(0.5);

    /// <summary>What is saved, in one sentence.</summary>
    public static string Finding(BillSaving bill, QuantityText text)
    {
        if (Abs(bill.Total) < Nothing) return "The electricity bill stays as it is";
        var verb = bill.Total > Money.Zero ? "falls" : "rises";
        var most = bill.Charges.MaxBy(charge => Abs(charge.Saving))!;
        var where = Abs(bill.Demand) >= Nothing ? $", {text.Money(bill.Demand * Math.Sign(bill.Total.Units))} of it on demand"
            : bill.Charges.Count(charge => charge.Saving != Money.Zero) > 1 ? $", most of it on {most.Name}" : "";
        return $"The electricity bill {verb} by {text.Money(Abs(bill.Total))} a year{where}";
    }

    internal static IEnumerable<string> Sentences(StudyResult result, OptionResult option, QuantityText text)
    {
        string[] said = [IsDelayed(option.Bill) ? Demand(option.Bill, text) : "", Basis(result.Study, text), Fuel(result, option, text), Blended(option.Bill, text)];
        return said.Where(sentence => sentence.Length > 0);
    }

    /// <summary>Demand apart, with what a ratchet takes off the first year; empty where no demand is billed.</summary>
    public static string Demand(BillSaving bill, QuantityText text) => Demand("Of this", bill, text);

    private static string Demand(string of, BillSaving bill, QuantityText text)
    {
        if (!bill.Charges.Any(BillSavings.IsDemand)) return "";
        if (Abs(bill.Demand) < Nothing) return "Demand charges stay as they are.";
        if (bill.Demand < Money.Zero) return $"Demand adds {text.Money(-bill.Demand)} a year.";
        var late = IsDelayed(bill)
            ? $"; in the first year only {text.Money(bill.FirstYearDemand)}, because the ratchet remembers earlier peaks." : ".";
        return $"{of}, {text.Money(bill.Demand)} a year is demand{late}";
    }

    private static bool IsDelayed(BillSaving bill) => bill.Demand > Money.Zero && bill.Demand - bill.FirstYearDemand >= Nothing;

    /// <summary>What the figures rest on: the meter's own year, or a stated base load; empty where it cannot matter.</summary>
    public static string Basis(Study study, QuantityText text)
    {
        if (study.Meter is { } meter) return $"The present bill is that of the meter’s own year: {meter.Name}, 365 days from {text.Date(meter.FirstDay)}.";
        if (!DependsOnOtherLoad(study.Tariff)) return "";
        return study.Site.BaseLoad > Power.Zero
            ? $"Base load is stated, {text.Kilowatts(study.Site.BaseLoad)} day and night; demand and block effects are estimates until the meter’s own year is taken in."
            : "No other load is stated and no meter year is taken in: demand and block effects are estimates, as if the lights were alone on the meter.";
    }

    /// <summary>What one average price would have promised, and how far off that is; empty where it is the same.</summary>
    public static string Blended(BillSaving bill, QuantityText text)
    {
        if (bill is not { BlendedPrice: { } price, BlendedTotal: { } promised } || Abs(promised - bill.Total) < Nothing) return "";
        var start = $"Averaged over the year this bill is {text.Price(price)}. At that price {text.KilowattHours(bill.Energy)} less would have promised {text.Money(promised)} a year; the two bills differ by {text.Money(bill.Total)}";
        if (bill.Total <= Money.Zero) return start + ".";
        var off = (promised - bill.Total) / bill.Total;
        return off switch
        {
            > WorthSaying => $"{start}: one average price promises {text.Percent(off)} too much.",
            < -WorthSaying => $"{start}: one average price promises {text.Percent(-off)} too little.",
            _ => "",
        };
    }

    internal static string ForTheBoard(BillSaving bill, QuantityText text) =>
        bill.Total > Money.Zero && Abs(bill.Demand) >= bill.Total * WorthTheBoard ? Demand("Of the saving on the bill", bill, text) : "";

    /// <summary>Fuel is on no electricity bill, yet the cost of the lights counts it.</summary>
    private static string Fuel(StudyResult result, OptionResult option, QuantityText text)
    {
        var fuel = option.Bill.Total - (result.Now.Site.Cost - option.After.Site.Cost);
        if (result.Now.Site.FuelTherms == 0 && option.After.Site.FuelTherms == 0 || Abs(fuel) < Nothing) return "";
        return fuel > Money.Zero
            ? $"Not on this bill: {text.Money(fuel)} more heating fuel a year, as the lights give less heat; payback counts it."
            : $"Not on this bill: {text.Money(-fuel)} less heating fuel a year; payback counts it.";
    }

    private static bool DependsOnOtherLoad(Tariff tariff) =>
        tariff.Demand.Count > 0 || tariff.Energy.Any(charge => charge.Blocks.Count > 1) || tariff.MinimumBill is not null || tariff.PowerFactor is not null || tariff.LoadFactorCredit is not null;

    private static Money Abs(Money amount) => amount < Money.Zero ? -amount : amount;
}
