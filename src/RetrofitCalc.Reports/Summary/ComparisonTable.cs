using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Options side by side with keeping.</summary>
internal static class ComparisonTable
{
    public const string AskedFor = " (asked for)";

    private const string CropLight = "Crop light";

    private sealed record Figure(string Name, Func<PrintedCase, string> Now, Func<PrintedOption, string> After);

    public static ReportTable ForTheBoard(SummaryContext context) => Table(context, "What we compared", Board(context));

    public static ReportTable Full(SummaryContext context) => Table(context, "Every figure, now and by option", Everything(context));

    private static ReportTable Table(SummaryContext context, string caption, IReadOnlyList<Figure> figures)
    {
        var options = context.Options.OrderBy(option => option == context.AskedFigures ? 0 : 1).ToList();
        return new ReportTable(caption,
            [
                new($"{context.Years} years, against keeping", 2.1), new("Keep as is", 1.2, true),
                .. options.Select(option => new ReportColumn(
                    option.Result.Option.Name + (option == context.AskedFigures ? AskedFor : ""), 1.4, true, option == context.AskedFigures)),
            ],
            [.. figures.Select(figure => new ReportRow([figure.Name, figure.Now(context.Now), .. options.Select(figure.After)]))]);
    }

    private static Figure[] Board(SummaryContext context)
    {
        var all = Everything(context).Select(figure => figure.Name == CropLight ? Brief(context) : figure);
        return [.. all.Where(figure => figure.Name is "Connected load" or "Cost per year" or "First cost" or "Simple payback" or "Net present value" or CropLight
            || figure.Name.StartsWith("Replacements", StringComparison.Ordinal))];
    }

    private static Figure[] Everything(SummaryContext context)
    {
        var (text, years, carbon) = (context.Text, context.Years, new CarbonFigures(context.Result));
        Figure Lighting(string name, Func<PrintedCase, string> figure) => new(name, figure, option => figure(option.After));
        Figure Money(string name, Func<PrintedOption, string> figure) => new(name, _ => QuantityText.DoesNotApply, figure);
        return
        [
            Lighting("Connected load", c => text.Watts(c.Connected)),
            Lighting("Ballast loss", c => (c.LossIsPartial ? "at least " : "") + text.Watts(c.BallastLoss)),
            Lighting("Heat of the lights", c => text.BtuPerHour(c.Heat)),
            Lighting("Cooling they ask for", c => text.Tons(c.Heat)),
            Lighting("Lighting energy per year", c => text.KilowattHours(c.Lighting)),
            Lighting("Cooling and heating electricity that follows", c => text.KilowattHours(c.Case.Site.Plant)),
            Lighting("Fuel the lights' heat saves, therm a year", c => text.Number(c.Case.Site.FuelTherms)),
            Lighting("Cost per year", c => text.Money(c.Cost)),
            Money("First cost", o => text.Money(o.FirstCost)),
            Lighting($"Replacements, {years} yr", c => text.Money(c.Replacements)),
            Money("Simple payback", o => text.Payback(o.Result.SimplePayback, years)),
            Money("without price rises or replacements", o => text.Payback(o.Result.PlainPayback, years)),
            Money("Discounted payback", o => text.Payback(o.Result.DiscountedPayback, years)),
            Money("Net present value", o => text.Money(o.Result.NetPresentValue)),
            Money("Internal rate of return", o => Rates(o.Result.InternalRates, text)),
            .. Light(context),
            Lighting("Carbon a year, average of the grid, kg CO2e", c => CarbonFigures.Text(carbon.Inventory(c.Case), text)),
            Money("Carbon saved a year by the change, kg CO2e", o => CarbonFigures.Text(carbon.Saved(o.Result), text)),
            Money("Mercury in lamps taken out, g", o => CarbonFigures.Mercury(carbon.Retired(o.Result), text)),
        ];
    }

    private static Figure Brief(SummaryContext context) =>
        new(CropLight, _ => LightWords.Brief(context.Result.Light, context.Study, context.Text), o => LightWords.Brief(o.Result.Light, context.Study, context.Text));

    /// <summary>Crop and people; and, where light differs, what each option saves at equal light.</summary>
    private static IEnumerable<Figure> Light(SummaryContext context)
    {
        var (text, result, years) = (context.Text, context.Result, context.Years);
        if (context.CropGrows)
            yield return new Figure(CropLight, _ => LightWords.Short(result.Light, context.Study, text), o => LightWords.Short(o.Result.Light, context.Study, text));
        if (context.Options.Any(o => o.Result.AtEqualLight.Differs))
        {
            Figure Equal(string name, Func<EqualLight, string> figure) => new(name, _ => QuantityText.DoesNotApply, o => EqualLightWords.Figure(o.Result.AtEqualLight, figure));
            yield return new Figure("Saved a year, luminaire for luminaire", _ => QuantityText.DoesNotApply, o => text.Money(o.BillSaving));
            yield return Equal("Saved a year at equal light", e => text.Money(e.AnnualBillSaving));
            yield return Equal("First cost at equal light", e => text.Money(e.FirstCost));
            yield return Equal("Simple payback at equal light", e => text.Payback(e.SimplePayback, years));
            yield return Equal("Connected load at equal light", e => text.Watts(e.Connected));
        }
        foreach (var place in result.Light.People)
            yield return new Figure($"Light for people, {context.AreaName(place.Area)}", _ => PeopleText.Now(place, text), o => PeopleText.After(o.Result.Light, place.Area, text));
    }

    private static string Rates(IReadOnlyList<double> rates, QuantityText text) => rates.Count switch
    {
        0 => "none",
        1 => text.Percent(rates[0], 1),
        _ => "several: " + string.Join("; ", rates.Select(rate => text.Percent(rate, 1))),
    };
}
