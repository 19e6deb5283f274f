using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Shared;

/// <summary>One of the strip's figures; null where a side has no such figure.</summary>
/// <param name="First">Shown on phones without opening the rest.</param>
public sealed record StripFigure(string Name, StripValue? Now, StripValue? Proposed, bool First = false);

/// <summary>A figure with its unit or remark.</summary>
public sealed record StripValue(string Number, string Unit = "", bool Stop = false, bool Unknown = false);

/// <summary>The seven figures that stay in sight.</summary>
public static class StripFigures
{
    public static IReadOnlyList<StripFigure> Of(StudyResult? result)
    {
        if (result is null) return [];
        var text = QuantityText.For(result.Study);
        var now = result.Now.Site;
        var option = result.Chosen;
        var after = option?.After.Site;
        StripValue? Side(ShareFigures? side, Func<ShareFigures, string> number, string unit) => side is null ? null : new(number(side), unit);
        StripValue Cost(LightingCase side) => new(text.Money(PrintedSums.Cost(side)), "/yr");
        StripFigure Pair(string name, Func<ShareFigures, string> number, string unit, bool first = false) =>
            new(name, Side(now, number, unit), Side(after, number, unit), first);
        return
        [
            Pair("Load", s => text.Number(s.Connected.Kilowatts, 1), "kW", first: true),
            Pair(EnergyName(result), s => text.Number((s.Lighting + s.Plant).KilowattHours), "kWh/yr"),
            new("Cost", Cost(result.Now), option is null ? null : Cost(option.After), First: true),
            Pair("Heat from lights", s => text.Number(s.Heat.BtuPerHour), "BTU/h"),
            new("Payback", null, option is null ? null : Payback(text, option), First: true),
            new("Crop light", StripLight.Now(result), option is null ? null : StripLight.Proposed(result, option, text)),
            new("Open stops", null, option is null ? null : Stops(result), First: true),
        ];
    }

    private static string EnergyName(StudyResult result) =>
        result.Now.Site.Plant.KilowattHours == 0 ? "Energy" : "Energy with plant";

    private static StripValue Payback(QuantityText text, OptionResult option)
    {
        var period = option.CashFlow.Count - 1;
        return option.SimplePayback.Years is { } years
            ? new(text.Number(years, 1), $"yr ({text.Range(option.Ranges.Payback, period)}){(option.SimplePayback.LostAgain ? ", lost again" : "")}")
            : new(text.Payback(option.SimplePayback, period));
    }

    private static StripValue? Stops(StudyResult result)
    {
        var open = result.Notices.Count(n => n is { Severity: NoticeSeverity.Stop, Open: true });
        return open == 0 ? new("none") : new(open.ToString(System.Globalization.CultureInfo.InvariantCulture), "to answer", Stop: true);
    }
}
