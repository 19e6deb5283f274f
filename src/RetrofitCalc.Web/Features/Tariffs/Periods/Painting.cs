using RetrofitCalc.Engine.Billing;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Tariffs.Periods;

/// <summary>A block of months and hours to be given one price.</summary>
/// <param name="Period">Place of the period; null for a new one.</param>
/// <param name="Months">First and last, included; may run over New Year. [1–12]</param>
/// <param name="Hours">First and last, included; may run over midnight. [0–23]</param>
public sealed record Painting(int? Period, DayKind Days, (int First, int Last) Months, (int First, int Last) Hours)
{
    private const string Energy = "Tariff.Energy[";

    /// <summary>The tariff painted; the same state when nothing changes or when the tariff has no table of hours.</summary>
    public EditState On(EditState state)
    {
        var before = state.Study.Tariff.Energy;
        if (HourTable.Of(before) is not { } table) return state;
        if (Period is null) table = table.With(NewPeriod(table));
        var after = table.Paint(Period ?? table.Periods.Count - 1, Days, Months, Hours).ToCharges();
        return Says(after) == Says(table.ToCharges())
            ? state
            : new(TariffEdits.With(state.Study, t => t with { Energy = after }), [.. state.Drafts.Select(d => Moved(d, before, after)).OfType<CellDraft>()]);
    }

    /// <summary>A price like that of the first hour painted, under a name nobody has yet.</summary>
    private EnergyCharge NewPeriod(HourTable table)
    {
        var claims = table.At(Days == DayKind.Weekend, Months.First, Hours.First);
        var like = table.Periods[claims.Count > 0 ? claims[0] : 0];
        var name = Enumerable.Range(table.Periods.Count + 1, table.Periods.Count + 1).Select(n => $"Period {n}").First(n => table.Periods.All(p => p.Name != n));
        return like with { Name = name };
    }

    /// <summary>A text that waits to be mended follows the price it was typed for; one typed for hours goes with the hours painted over.</summary>
    private static CellDraft? Moved(CellDraft draft, IReadOnlyList<EnergyCharge> before, IReadOnlyList<EnergyCharge> after)
    {
        if (!draft.Line.StartsWith(Energy, StringComparison.Ordinal)) return draft;
        var end = draft.Line.IndexOf(']', StringComparison.Ordinal) + 1;
        var (path, rest) = (draft.Line[..end], draft.Line[end..]);
        if (rest.StartsWith(".When", StringComparison.Ordinal)) return null;
        var price = EnergyPeriod.Of(before).FirstOrDefault(p => PeriodEdits.Path(p) == path)?.Price;
        var now = EnergyPeriod.Of(after).FirstOrDefault(p => p.Price.Name == price?.Name && p.Price.Blocks.SequenceEqual(price.Blocks));
        return now is null ? null : draft with { Line = PeriodEdits.Path(now) + rest };
    }

    private static string Says(IReadOnlyList<EnergyCharge> charges) =>
        string.Join('|', charges.Select(c => $"{c.Name} {c.When.Start} {c.When.End} {string.Join(',', c.When.Windows)}"));
}
