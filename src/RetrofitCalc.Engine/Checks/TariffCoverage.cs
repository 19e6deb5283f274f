using NodaTime;
using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Checks;

/// <summary>Whether exactly one energy charge applies at every instant of a year.</summary>
internal static class TariffCoverage
{
    public static void Run(Tariff tariff, int year, Problems problems)
    {
        var told = new HashSet<string>();
        for (var day = new LocalDate(year, 1, 1); day.Year == year; day = day.PlusDays(1))
        {
            bool[] inForce = [.. tariff.Energy.Select(charge => TariffDay.InForce(charge.When, day))];
            var weekend = TariffDay.IsWeekend(tariff, day);
            foreach (var piece in TariffDay.Pieces(tariff.Energy, inForce, weekend).Where(piece => piece.Claims.Count != 1))
                if (told.Add($"{piece.From} {piece.To} {weekend} {string.Join(',', piece.Claims)}"))
                    problems.Add("Tariff.Energy", Message(tariff, day, weekend, piece));
        }
    }

    private static string Message(Tariff tariff, LocalDate day, bool weekend, TariffPiece piece)
    {
        var when = $"on {CheckText.Day(day)} (a {(weekend ? "weekend day or holiday" : "weekday")}) from {CheckText.Tick(piece.From)} to {CheckText.Tick(piece.To)}";
        return piece.Claims.Count == 0
            ? $"No energy price applies {when}; exactly one must."
            : $"{piece.Claims.Count} energy prices apply {when}: {string.Join(", ", piece.Claims.Select(i => $"\"{tariff.Energy[i].Name}\""))}; exactly one must.";
    }
}
