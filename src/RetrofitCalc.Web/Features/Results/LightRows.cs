using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;

namespace RetrofitCalc.Web.Features.Results;

/// <summary>Light on crops and for people in the comparison: the worst area of each option, and its saving at equal light where that differs.</summary>
public static class LightRows
{
    /// <param name="result">The result.</param>
    /// <param name="options">Its options, in the order of the columns.</param>
    /// <param name="text">Text of figures.</param>
    public static IEnumerable<WayRow> Of(StudyResult result, IReadOnlyList<OptionResult> options, QuantityText text)
    {
        yield return new WayRow("Crop light", "", [LightWords.Short(result.Light, result.Study, text), .. options.Select(o => LightWords.Short(o.Light, result.Study, text))]);
        foreach (var row in AtEqualLight(options, text, result.Study.Assumptions.StudyYears)) yield return row;
        foreach (var place in result.Light.People)
            yield return new WayRow($"Light for people, {LightWords.Area(result.Study, place.Area)}", $"{text.Number(place.Wanted.Lux)} lx wanted",
                [PeopleText.Now(place, text), .. options.Select(o => PeopleText.After(o.Light, place.Area, text))]);
    }

    /// <summary>Each growing area by its worst stage, and its daily light as it is.</summary>
    public static IEnumerable<WayRow> ByArea(StudyResult result, IReadOnlyList<OptionResult> options, QuantityText text) => result.Light.WorstByArea.Select(now =>
        new WayRow(LightWords.Area(result.Study, now.Area), "", [
            now.Now is { } light ? text.Daily(light.Daily) : QuantityText.NotKnown,
            .. options.Select(o => o.Light.WorstByArea.FirstOrDefault(area => area.Area == now.Area) is { } after ? LightWords.Short(after, text) : QuantityText.NotKnown)]));

    private static IEnumerable<WayRow> AtEqualLight(IReadOnlyList<OptionResult> options, QuantityText text, int years)
    {
        if (!options.Any(o => o.AtEqualLight.Differs)) yield break;
        WayRow Row(string name, string unit, Func<OptionResult, string> cell) => new(name, unit, [QuantityText.DoesNotApply, .. options.Select(cell)]);
        yield return Row("Saved, luminaire for luminaire", "per year", o => text.Money(o.AnnualBillSaving));
        yield return Row("Saved at equal light", "per year", o => EqualLightWords.Figure(o.AtEqualLight, equal => text.Money(equal.AnnualBillSaving)));
        yield return Row("First cost at equal light", "", o => EqualLightWords.Figure(o.AtEqualLight, equal => text.Money(equal.FirstCost)));
        yield return Row("Payback at equal light", "", o => EqualLightWords.Figure(o.AtEqualLight, equal => text.Payback(equal.SimplePayback, years)));
        yield return Row("Connected load at equal light", "W", o => EqualLightWords.Figure(o.AtEqualLight, equal => text.Number(equal.Connected.Watts)));
    }
}
