using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Lamp and ballast lives of each line against each other, and against what would replace them.</summary>
internal static class ClockTable
{
    public static ReportTable Of(SummaryContext context) => new("Lamp and ballast clocks, years between replacements",
        [
            new("Survey line", 2), new("Hours a year", 0.8, true), new("Lamps", 0.7, true), new("Ballasts", 0.7, true),
            new("Tubes after", 0.8, true), new("Which fails first", 1.4),
        ],
        [.. context.Result.Now.Lines.Select(line => Row(context, line))]);

    /// <summary>True when the ballast is replaced more often than the lamps it feeds.</summary>
    public static bool BallastFirst(LineFigures line) => Interval(line, WearPart.Ballast) < Interval(line, WearPart.Lamp);

    private static ReportRow Row(SummaryContext context, LineFigures line)
    {
        var text = context.Text;
        var after = context.Asked?.After.Lines.FirstOrDefault(l => l.Line == line.Line);
        var led = after is null ? null : Interval(after, WearPart.Tube) ?? Interval(after, WearPart.Luminaire);
        return new ReportRow([
            context.LineName(line.Line), text.Number(line.Hours.Hours), Years(Interval(line, WearPart.Lamp), text),
            Years(Interval(line, WearPart.Ballast), text), led is null ? QuantityText.DoesNotApply : Years(led, text), First(line)]);
    }

    private static string First(LineFigures line) => (Interval(line, WearPart.Lamp), Interval(line, WearPart.Ballast)) switch
    {
        (null, _) or (_, null) => QuantityText.NotKnown,
        var (lamp, ballast) when ballast < lamp => "the ballast",
        var (lamp, ballast) when lamp < ballast => "the lamps",
        _ => "together",
    };

    private static string Years(double? years, QuantityText text) => years is { } y ? text.Number(y, 1) : QuantityText.NotKnown;

    private static double? Interval(LineFigures line, WearPart part) => line.Clocks.Where(clock => clock.Part == part).Min(clock => clock.Interval);
}
