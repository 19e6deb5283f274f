using System.Text.Json.Nodes;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Writes demand charges: those without windows by month, those with windows by month and hour, one of each kind at a time.</summary>
internal static class DemandWriter
{
    public static void Write(Tariff tariff, JsonObject record, List<string> notHeld)
    {
        var flat = Fitting(tariff.Demand.Where(charge => charge.When.Windows.Count == 0), notHeld);
        var byTime = Fitting(tariff.Demand.Where(charge => charge.When.Windows.Count > 0), notHeld);
        if (flat.Count > 0)
            WriteFlat(flat, record, Unit(tariff, flat, notHeld));
        if (byTime.Count > 0)
            WriteByTime(byTime, record, Unit(tariff, byTime, notHeld));
        if (flat.Count + byTime.Count > 0)
            record["demandwindow"] = flat.Concat(byTime).First().WindowMinutes;
        var ratcheted = flat.Count > 0 ? flat : byTime;
        Ratchets(ratcheted, record);
        foreach (var charge in flat.Concat(byTime))
        {
            notHeld.AddRange(NotHeld(charge, flat.Concat(byTime).First().WindowMinutes));
            if (!HoldsRatchet(ratcheted, charge))
                notHeld.Add($"The ratchet of \"{charge.Name}\", or that it has none: the record holds one ratchet in each month.");
        }
        PowerFactor(tariff.PowerFactor, record, notHeld);
    }

    /// <summary>As many charges, in order, as one table can hold.</summary>
    private static List<DemandCharge> Fitting(IEnumerable<DemandCharge> charges, List<string> notHeld)
    {
        var kept = new List<DemandCharge>();
        foreach (var charge in charges)
        {
            DemandCharge[] together = [.. kept, charge];
            if (HourCells.Of(together)?.Rows(weekend: false) is not null)
                kept.Add(charge);
            else
                notHeld.Add($"The demand charge \"{charge.Name}\": its hours or dates do not fit whole hours and months, or it applies together with another of its kind.");
        }
        return kept;
    }

    private static void WriteFlat(List<DemandCharge> charges, JsonObject record, string unit)
    {
        var (structure, cells) = Structure(charges, unit);
        record["flatdemandunit"] = unit;
        record["flatdemandstructure"] = structure;
        record["flatdemandmonths"] = new JsonArray([.. cells.Rows(weekend: false)!.Select(row => (JsonNode)Place(row[0], structure))]);
    }

    private static void WriteByTime(List<DemandCharge> charges, JsonObject record, string unit)
    {
        var (structure, cells) = Structure(charges, unit);
        record["demandrateunit"] = unit;
        record["demandratestructure"] = structure;
        record["demandweekdayschedule"] = RateWriter.Table([.. cells.Rows(weekend: false)!.Select(Filled)]);
        record["demandweekendschedule"] = RateWriter.Table([.. cells.Rows(weekend: true)!.Select(Filled)]);
        IReadOnlyList<int> Filled(IReadOnlyList<int> row) => [.. row.Select(place => Place(place, structure))];
    }

    /// <summary>Periods of equal prices, with one of no price last for hours that no charge claims.</summary>
    private static (JsonArray Structure, HourCells Cells) Structure(List<DemandCharge> charges, string unit)
    {
        string[] written = [.. charges.Select(charge => Period(charge, unit).ToJsonString())];
        string[] periods = [.. written.Distinct()];
        var cells = HourCells.Of(charges)!.Moved(charge => Array.IndexOf(periods, written[charge]));
        var gaps = new[] { false, true }.Any(weekend => cells.Rows(weekend)!.Any(row => row.Contains(HourCells.Nothing)));
        var structure = new JsonArray([.. periods.Select(period => JsonNode.Parse(period))]);
        if (gaps)
            structure.Add(new JsonArray(new JsonObject { ["rate"] = 0, ["unit"] = unit }));
        return (structure, cells);
    }

    private static int Place(int place, JsonArray structure) => place == HourCells.Nothing ? structure.Count - 1 : place;

    private static JsonArray Period(DemandCharge charge, string unit) =>
    [
        .. charge.Blocks.Select(block => (JsonNode)new JsonObject { ["max"] = block.UpTo.Kilowatts, ["rate"] = block.Price.PerKilowatt, ["unit"] = unit }),
        new JsonObject { ["rate"] = charge.Price.PerKilowatt, ["unit"] = unit },
    ];

    /// <summary>Shares of the charge that holds in each month.</summary>
    private static void Ratchets(List<DemandCharge> charges, JsonObject record)
    {
        double[] shares = [.. Enumerable.Range(1, 12).Select(month => ByMonth(charges, month)?.Ratchet?.Share ?? 0)];
        if (shares.Any(share => share > 0))
            record["demandratchetpercentage"] = RateWriter.Numbers(shares);
    }

    private static DemandCharge? ByMonth(List<DemandCharge> charges, int month) =>
        charges.Find(charge => TariffDay.InForce(charge.When, new(2027, month, 15)));

    private static bool HoldsRatchet(List<DemandCharge> ratcheted, DemandCharge charge) =>
        !ratcheted.Contains(charge)
            ? charge.Ratchet is null
            : Enumerable.Range(1, 12).Where(month => TariffDay.InForce(charge.When, new(2027, month, 15)))
                .All(month => ByMonth(ratcheted, month)?.Ratchet?.Share == charge.Ratchet?.Share);

    private static IEnumerable<string> NotHeld(DemandCharge charge, int window)
    {
        if (charge.WindowMinutes != window)
            yield return $"The window of {charge.WindowMinutes} minutes of \"{charge.Name}\": the record has one window, {window} minutes.";
        if (charge.Minimum is not null)
            yield return $"The least demand billed of \"{charge.Name}\".";
        if (charge.Rounding is not null)
            yield return $"How the demand of \"{charge.Name}\" is rounded.";
        if (charge.Ratchet is { } ratchet && (ratchet.Months != 11 || ratchet.PeakMonths.Count > 0))
            yield return $"Which months the ratchet of \"{charge.Name}\" looks back to.";
    }

    private static string Unit(Tariff tariff, List<DemandCharge> charges, List<string> notHeld)
    {
        if (tariff.PowerFactor is not BilledInKilovoltAmperes clause)
            return "kW";
        var named = charges.Count(charge => clause.On.Count == 0 || clause.On.Contains(charge.Name));
        if (named > 0 && named < charges.Count)
            notHeld.Add("That only some of the demand charges are billed in kVA.");
        return named == charges.Count ? "kVA" : "kW";
    }

    private static void PowerFactor(PowerFactorClause? clause, JsonObject record, List<string> notHeld)
    {
        if (clause is TargetPowerFactor or AddedPerPoint)
            notHeld.Add("What a poor power factor adds to demand.");
        if (clause is not ReactiveAboveShare(var free, var price))
            return;
        record["demandreactivepowercharge"] = price.PerKilowatt;
        if (free > 0)
            notHeld.Add("Which share of reactive demand is free.");
        if (clause.On.Count > 0)
            notHeld.Add("Which demand charges the reactive demand is measured with.");
    }
}
