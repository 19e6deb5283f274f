using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether exactly one energy charge applies at every instant of any year, and every block by hours of use finds its demand.</summary>
internal static class TariffCoverage
{
    private static readonly LocalDate LeapDay = new(2028, 2, 29);

    public static void Run(Study study, Problems problems)
    {
        var tariff = study.Tariff;
        if (tariff.Energy.Count == 0)
            return;
        LocalDate[] days = [.. Days(study.Assumptions.Start.Year)];
        foreach (var wrong in WrongPieces(tariff, days))
            problems.Add("Tariff.Energy", Message(tariff, wrong));
        foreach (var (index, charge) in tariff.Energy.Index())
            CheckDemandInForce(tariff, index, days, problems);
    }

    /// <summary>The days of a year, and 29 February, which billing months may reach even where the year itself has none.</summary>
    private static IEnumerable<LocalDate> Days(int year)
    {
        for (var day = new LocalDate(year, 1, 1); day.Year == year; day = day.PlusDays(1))
            yield return day;
        if (!CalendarSystem.Iso.IsLeapYear(year))
            yield return LeapDay;
    }

    private static IEnumerable<Wrong> WrongPieces(Tariff tariff, LocalDate[] days)
    {
        var known = new Dictionary<(string, bool), IReadOnlyList<TariffPiece>>();
        var found = new Dictionary<string, Wrong>();
        foreach (var day in days)
            Look(day, TariffDay.IsWeekend(tariff, day));
        // A date is a weekday in one year and a weekend day in another, and a season may be billed for days outside it.
        foreach (var day in days)
            if (!known.ContainsKey((KeyOf(InForce(day)), !TariffDay.IsWeekend(tariff, day))))
                Look(day, !TariffDay.IsWeekend(tariff, day));
        return found.Values;

        bool[] InForce(LocalDate day) => [.. tariff.Energy.Select(charge => TariffDay.InForce(charge.When, day))];

        static string KeyOf(bool[] inForce) => string.Concat(inForce.Select(yes => yes ? '1' : '0'));

        void Look(LocalDate day, bool weekend)
        {
            var inForce = InForce(day);
            var key = (KeyOf(inForce), weekend);
            if (!known.TryGetValue(key, out var pieces))
                known[key] = pieces = [.. TariffDay.Pieces(tariff.Energy, inForce, weekend).Where(piece => piece.Claims.Count != 1)];
            foreach (var piece in pieces)
            {
                var same = $"{piece.From} {piece.To} {weekend} {string.Join(',', piece.Claims)}";
                found[same] = found.TryGetValue(same, out var earlier) ? earlier with { Last = day, Days = earlier.Days + 1 } : new(piece, weekend, day, day, 1);
            }
        }
    }

    private static string Message(Tariff tariff, Wrong wrong)
    {
        var piece = wrong.Piece;
        var when = $"on {CheckText.Day(wrong.First)} (a {(wrong.Weekend ? "weekend day or holiday" : "weekday")}) from {CheckText.Tick(piece.From)} to {CheckText.Tick(piece.To)}"
            + (wrong.Days > 1 ? $", and so on {wrong.Days} days up to {CheckText.Day(wrong.Last)}" : "");
        return piece.Claims.Count == 0
            ? $"No energy price applies {when}; exactly one must."
            : $"{piece.Claims.Count} energy prices apply {when}: {string.Join(", ", piece.Claims.Select(i => $"\"{tariff.Energy[i].Name}\""))}; exactly one must.";
    }

    private static void CheckDemandInForce(Tariff tariff, int index, LocalDate[] days, Problems problems)
    {
        var charge = tariff.Energy[index];
        DemandCharge[] demand = [.. tariff.Demand.Where(each => charge.BlocksByDemand is null || each.Name == charge.BlocksByDemand)];
        if (charge.BlockUnit != BlockUnit.PerKilowatt || charge.Blocks.Count < 2 || demand.Length == 0)
            return;
        foreach (var day in days.Where(day => TariffDay.InForce(charge.When, day) && !demand.Any(each => TariffDay.InForce(each.When, day))).Take(1))
            problems.Add($"Tariff.Energy[{index}].BlocksByDemand", $"Blocks of \"{charge.Name}\" are counted by hours of use, but on {CheckText.Day(day)} no demand charge for them is in force.");
    }

    private sealed record Wrong(TariffPiece Piece, bool Weekend, LocalDate First, LocalDate Last, int Days);
}
