using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Charts;

namespace RetrofitCalc.Web.Features.Light.Layout.Photometry;

/// <summary>Intensity over angle through the aim, for types A and B, and the table of any type.</summary>
public static class AngleChart
{
    private const double HalfTurn = 90, StepDegrees = 2.5, TwinStep = 10;

    public static ChartFigure? Of(LuminousIntensityDistribution light, QuantityText text)
    {
        if (light.Type == PhotometricType.C) return null;
        var highest = light.Candelas.SelectMany(plane => plane).Max();
        return new ChartFigure(
            PhotometryText.Finding(light, text), "Candelas over the angle from the aim: level a full line, upright dashed.", PhotometryText.Finding(light, text) + ". Values in the table below.",
            new ChartSpec(ChartKind.Line,
            [
                new("level", Ink.NowCurve, Points(angle => light.IntensityAt(0, angle))),
                new("upright", Ink.ProposedCurve, Points(angle => light.IntensityAt(angle, 0))),
            ])
            {
                Across = new(-HalfTurn, HalfTurn, [.. new[] { -90, -60, -30, 0, 30, 60, 90 }.Select(at => new ChartTick(at, [text.Number(at)]))], "degrees from the aim"),
                Up = AxisScale.Around(0, highest, value => text.Number(value), "cd"),
            },
            Twin(light, text))
        {
            Legend = [new(Ink.NowCurve, "level"), new(Ink.ProposedCurve, "upright")],
        };
    }

    /// <summary>Every ten degrees: for type C along and across from straight down, else level and upright from the aim.</summary>
    public static ChartTable Twin(LuminousIntensityDistribution light, QuantityText text)
    {
        var isC = light.Type == PhotometricType.C;
        var first = isC ? 0 : -HalfTurn;
        var angles = Enumerable.Range(0, 19).Select(i => first + i * TwinStep);
        return new(
            [isC ? "Angle from straight down" : "Angle from the aim", isC ? "Along, cd" : "Level, cd", isC ? "Across, cd" : "Upright, cd"],
            [.. angles.Select(angle => (IReadOnlyList<string>)
                [$"{text.Number(angle)}°", text.Number(isC ? light.IntensityAt(angle, 0) : light.IntensityAt(0, angle)), text.Number(isC ? light.IntensityAt(angle, 90) : light.IntensityAt(angle, 0))])]);
    }

    private static IReadOnlyList<ChartPoint> Points(Func<double, double> intensity) =>
        [.. Enumerable.Range(0, (int)(2 * HalfTurn / StepDegrees) + 1).Select(i => -HalfTurn + i * StepDegrees).Select(angle => new ChartPoint(angle, intensity(angle)))];
}
