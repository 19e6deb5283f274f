using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Files.Tariffs;

/// <summary>Writes a tariff as a rate record of version 7. What it cannot hold is said, never rounded into it.</summary>
internal static class RateWriter
{
    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static Parsed<RateRecordText> Write(Tariff tariff)
    {
        if (HourTable.Of(tariff.Energy) is not { } table)
            return Bad([.. HourTable.Misfits(tariff.Energy).Select(misfit => $"A rate record holds whole months and hours. {misfit}")]);
        if (table.Rows(weekend: false) is not { } weekday || table.Rows(weekend: true) is not { } weekend || weekday.Concat(weekend).Any(row => row.Contains(HourCells.Nothing)))
            return Bad("In some hours no energy price holds, or more than one. Mend the tariff first.");
        var notHeld = new List<string>();
        var record = new JsonObject();
        Identity(tariff, record, notHeld);
        Energy(tariff, table, record, notHeld);
        record["energyweekdayschedule"] = Table(weekday);
        record["energyweekendschedule"] = Table(weekend);
        Adjustments(tariff, record, notHeld);
        DemandWriter.Write(tariff, record, notHeld);
        Fixed(tariff, record, notHeld);
        notHeld.AddRange(NotHeld(tariff));
        var file = new JsonObject { ["items"] = new JsonArray(record) };
        return Parsed.Good(new RateRecordText(JsonSerializer.SerializeToUtf8Bytes(file, Readable), notHeld));
    }

    public static JsonArray Table(IReadOnlyList<IReadOnlyList<int>> rows) =>
        [.. rows.Select(row => (JsonNode)new JsonArray([.. row.Select(place => (JsonNode)place)]))];

    private static void Identity(Tariff tariff, JsonObject record, List<string> notHeld)
    {
        record["name"] = tariff.Name;
        if (tariff.Source.Source.Length > 0)
            record["source"] = tariff.Source.Source;
        if (tariff.ValidFrom is { } from)
            record["startdate"] = Seconds(from);
        if (tariff.ValidTo is { } to)
            record["enddate"] = Seconds(to);
        if (tariff.Currency != "USD")
            notHeld.Add($"The currency: amounts are in {tariff.Currency}, a record is read in US dollars.");
    }

    private static void Energy(Tariff tariff, HourTable table, JsonObject record, List<string> notHeld)
    {
        record["energyratestructure"] = new JsonArray([.. table.Periods.Select(Period)]);
        if (table.Periods.Count > 1)
            record["energycomments"] = string.Join("; ", table.Periods.Select((period, i) => $"Period {i + 1}: {period.Name}"));
        foreach (var charge in table.Periods.Where(period => period.BlocksByDemand is { } name && name != tariff.Demand.FirstOrDefault()?.Name))
            notHeld.Add($"Which demand charge the blocks of \"{charge.Name}\" are counted by.");
    }

    private static JsonNode Period(EnergyCharge charge) => new JsonArray([.. charge.Blocks.Select(block =>
    {
        var tier = new JsonObject();
        if (block.UpTo is { } end)
            tier["max"] = end.KilowattHours;
        tier["rate"] = block.Price.PerKilowattHour;
        tier["unit"] = charge.BlockUnit switch { BlockUnit.PerDay => "kWh daily", BlockUnit.PerKilowatt => "kWh/kW", _ => "kWh" };
        return (JsonNode)tier;
    })]);

    /// <summary>Adjustments of whole months add up by month.</summary>
    private static void Adjustments(Tariff tariff, JsonObject record, List<string> notHeld)
    {
        var months = new double[12];
        foreach (var adjustment in tariff.Adjustments)
        {
            if (adjustment.When.Windows.Count > 0 || HourCells.Misfits("", adjustment.When).Any())
            {
                notHeld.Add($"The adjustment \"{adjustment.Name}\": a record holds adjustments by month, not by hour or part of a month.");
                continue;
            }
            for (var month = 0; month < 12; month++)
                if (TariffDay.InForce(adjustment.When, new LocalDate(2027, month + 1, 15)))
                    months[month] += adjustment.Prices[adjustment.Prices.Count == 1 ? 0 : month].PerKilowattHour;
        }
        if (months.Any(price => price != 0))
            record["fueladjustmentsmonthly"] = Numbers(months);
    }

    public static JsonArray Numbers(IEnumerable<double> numbers) => [.. numbers.Select(number => (JsonNode)number)];

    private static void Fixed(Tariff tariff, JsonObject record, List<string> notHeld)
    {
        if (tariff.Fixed.Count > 0)
        {
            var per = tariff.Fixed[0].Per;
            record["fixedchargefirstmeter"] = tariff.Fixed.Where(charge => charge.Per == per).Sum(charge => charge.Amount.Units);
            record["fixedchargeunits"] = per == ChargedPer.Day ? "$/day" : "$/month";
            notHeld.AddRange(tariff.Fixed.Where(charge => charge.Per != per).Select(charge => $"The fixed charge \"{charge.Name}\": a record holds charges by month or by day, not both."));
        }
        if (tariff.MinimumBill is { } minimum && minimum != Money.Zero)
        {
            record["mincharge"] = minimum.Units;
            record["minchargeunits"] = "$/month";
        }
    }

    private static IEnumerable<string> NotHeld(Tariff tariff)
    {
        foreach (var tax in tariff.Taxes)
            yield return $"The tax \"{tax.Name}\".";
        if (tariff.LoadFactorCredit is { } credit)
            yield return $"The credit \"{credit.Name}\".";
        if (tariff.Holidays.Count > 0)
            yield return "Which days are holidays.";
        if (tariff.Reading.DayOfMonth != 1 || tariff.Reading.Dates.Count > 0)
            yield return "When the meter is read.";
        if (tariff.SeasonChange != SeasonChange.ByDays)
            yield return "How a season that begins within a billing month is billed.";
        if (tariff.AmountDecimals != 2)
            yield return $"That amounts are rounded to {tariff.AmountDecimals} decimals.";
    }

    private static long Seconds(LocalDate day) => day.AtMidnight().InUtc().ToInstant().ToUnixTimeSeconds();

    private static Parsed<RateRecordText> Bad(params string[] messages) => Parsed.Bad<RateRecordText>([.. messages.Select(FileProblem.Of)]);
}
