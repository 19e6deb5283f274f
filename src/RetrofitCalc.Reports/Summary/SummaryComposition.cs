using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Puts the parts of a summary together, in the order they are read.</summary>
internal static class SummaryComposition
{
    private const string Deferral = "Local code, the inspector and a licensed electrician decide what may be done.";

    public static BudgetSummary Compose(SummaryContext context) => new()
    {
        Head = Head(context),
        AskedOption = context.Asked?.Option.Id,
        CurrencySign = context.Text.CurrencySign,
        Title = Headline.Title(context),
        Lead = Headline.Lead(context),
        Figures = Headline.Figures(context),
        RangeNote = context.Asked is null ? "" : "Ranges combine what each uncertain input does on its own; they are not a guarantee.",
        OpenStops = SafetyAnnex.OpenStops(context),
        CropLight = CropLightPart.Of(context),
        Comparison = ComparisonTable.ForTheBoard(context),
        FullComparison = ComparisonTable.Full(context),
        MoneyGoes = MoneyTables.FirstCost(context),
        CashFlow = MoneyTables.CashFlow(context),
        Seasons = SeasonTable.Of(context),
        Bill = context.Bill,
        Clocks = ClockTable.Of(context),
        Risks = Doubts.Risks(context),
        Narrowing = Doubts.Narrowing(context),
        Inputs = InputsAnnex.Of(context),
        Assumptions = AssumptionsAnnex.Of(context),
        Safety = SafetyAnnex.Of(context),
        Light = LightAnnex.Of(context),
        Drawings = Drawing.Of(context),
        Conventions = Conventions(context),
    };

    public static SheetHead Head(SummaryContext context)
    {
        var (study, request) = (context.Study, context.Request);
        return new SheetHead(
            SheetHead.SiteName(study), study.Name,
            $"{(request.Issued ? "Issued" : "Draft")}, revision {request.Revision}", context.Text.Date(request.Date), request.ForWhom, Deferral)
        {
            LetterPaper = SheetHead.OnLetter(study.Site),
            Day = request.Date,
        };
    }

    private static string Conventions(SummaryContext context)
    {
        var (a, text) = (context.Study.Assumptions, context.Text);
        var baseline = a.Baseline == Engine.Studies.Baseline.AsFound ? "as found" : "as designed";
        return string.Join(" ",
            BudgetSummary.NotProven,
            $"Discount rate {text.Percent(a.DiscountRate, 1)}, energy {text.Percent(a.EnergyEscalation, 1)} and parts and labour {text.Percent(a.CostEscalation, 1)} dearer a year, start {text.Date(a.Start)}; baseline {baseline}.",
            Deferral,
            context.Study.Invented ? "Site, prices and tariff are invented." : "",
            "The study file is attached to this PDF.").Replace("  ", " ", StringComparison.Ordinal);
    }
}
