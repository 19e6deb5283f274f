using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Schedules.Staggered;

/// <summary>Sentences about lights that come on at other times.</summary>
public static class StaggerText
{
    /// <summary>"Start Rack B an hour later: demand −3.2 kW, saves $410 a year."</summary>
    public static string Offer(StaggerOffer offer, Study study, QuantityText text)
    {
        var area = study.Areas.FirstOrDefault(a => a.Id == offer.Area)?.Name ?? offer.Area;
        var drop = offer.Drop is { Power: var power } && power.Kilowatts >= 0.05 ? $"demand {text.Kilowatts(-power)}, " : "";
        var after = offer.SavingAfter is { } later ? $", {text.Money(later)} once the proposed lights hang" : "";
        return $"Start {area} {Shift(offer.Shift)}: {drop}saves {text.Money(offer.Saving)} a year{after}.";
    }

    /// <summary>Where the drop falls, and what part of the saving is demand.</summary>
    public static string Detail(StaggerOffer offer, Study study, QuantityText text) => offer.Drop is not { } drop || drop.Power.Kilowatts < 0.05
        ? "All of it comes from cheaper hours."
        : $"The largest drop is in {text.Month(drop.Month.OnDayOfMonth(1))}, on {study.Tariff.Demand[drop.Charge].Name}; {text.Money(offer.Demand)} of the saving is demand.";

    public static string What(StaggerOffer offer, Study study) =>
        $"start of {study.Areas.FirstOrDefault(a => a.Id == offer.Area)?.Name} {Shift(offer.Shift)}";

    private static string Shift(int minutes)
    {
        var length = Math.Abs(minutes) switch { 60 => "an hour", 120 => "two hours", var other => $"{other} minutes" };
        return $"{length} {(minutes > 0 ? "later" : "earlier")}";
    }
}
