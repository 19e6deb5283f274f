using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>Sets of readings of an area, each with its mean and how it was weighted.</summary>
internal static class LightReadingsTable
{
    public static IEnumerable<ReportTable> Of(string areaId, SummaryContext context)
    {
        if (context.Study.Areas.FirstOrDefault(area => area.Id == areaId)?.Light is not { Readings.Count: > 0 } light) yield break;
        yield return new ReportTable("Readings",
            [
                new("Height and lit step", 1.1), new("Readings", 1.4), new($"Mean, {LightText.LightUnit}", 0.8, true), new("Lowest over mean", 0.8, true),
                new("Spread", 0.7, true), new("Off by", 0.7, true), new("Weighting", 2), new("Noted", 1.8),
            ],
            [.. light.Readings.Select(set => Row(set, light, context.Text))]);
    }

    private static ReportRow Row(ReadingSet set, AreaLight light, QuantityText text)
    {
        var place = text.Length(set.Height) + (set.LitStep is { Length: > 0 } step ? $", step {step}" : "");
        if (MeasuredLight.Of(set, light) is not { } read)
            return new([place, "none that count", .. Enumerable.Repeat(QuantityText.NotKnown, 4), "", Noted(set, text)]);
        var figures = read.Statistics;
        return new([place, $"{figures.Count}, {Pattern(set.Pattern)}, {Unit(set)}", text.Number(figures.Mean.MicromolesPerSquareMetre), text.Evenness(figures.MinimumToMean),
            figures.CoefficientOfVariation is { } spread ? text.Percent(spread) : QuantityText.DoesNotApply, $"±\u00A0{text.Percent(read.Uncertainty)}", read.Weighting, Noted(set, text)]);
    }

    private static string Pattern(ReadingPattern pattern) => pattern switch
    {
        ReadingPattern.CellCentres => "middles of cells",
        ReadingPattern.Crossings => "crossings, edges included",
        ReadingPattern.Quadrant => "one quarter",
        _ => "lines outwards",
    };

    private static string Unit(ReadingSet set) => set.Unit switch
    {
        LightUnit.Micromoles => "quantum meter",
        LightUnit.Lux => "lux" + By(set),
        _ => "foot-candles" + By(set),
    };

    private static string By(ReadingSet set) => set.Conversion is { } conversion ? FormattableString.Invariant($" at {conversion.LuxPerMicromole:0.#} lx per µmol ({conversion.Source.Source})") : ", no conversion chosen";

    private static string Noted(ReadingSet set, QuantityText text)
    {
        string[] said =
        [
            set.Date is { } date ? text.Date(date) : "no date",
            set.RoomDark switch { true => "room dark", false => "room not dark", _ => "dark not noted" },
            set.SensorLevel switch { true => "sensor level", false => "sensor not level", _ => "level not noted" },
            set.Note,
        ];
        return string.Join("; ", said.Where(part => part.Length > 0));
    }
}
