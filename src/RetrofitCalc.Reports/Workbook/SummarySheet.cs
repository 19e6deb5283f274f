namespace RetrofitCalc.Reports.Workbook;

/// <summary>The main figures, each a formula over the other sheets.</summary>
internal static class SummarySheet
{
    public static SheetBuilder Of(WorkbookContext context, InputsSheet inputs, LinesSheet lines, out string firstCost, out string saving)
    {
        var sheet = new SheetBuilder("Summary", [46, 20, 20, 20], 0);
        sheet.Texts(CellStyle.Title, context.Summary.Head.Site);
        sheet.Texts(CellStyle.StrongLine, context.Summary.Title);
        sheet.Texts(CellStyle.Line, $"{context.Summary.Head.Status} · {context.Summary.Head.Date}");
        sheet.Texts(CellStyle.Line, $"{BudgetSummary.NotProven} {context.Summary.Head.Deferral}");
        foreach (var stop in context.Summary.OpenStops) sheet.Texts(CellStyle.StrongLine, "STOP, open: " + stop);
        sheet.Texts(CellStyle.Head, "Lighting", "Now", "Proposed", "Saved");
        Compare(sheet, "Connected load, W", lines.Now.Connected, lines.After?.Connected, CellStyle.Whole);
        Compare(sheet, "Ballast loss, W", lines.Now.BallastLoss, lines.After?.BallastLoss, CellStyle.Whole);
        Compare(sheet, "Lighting energy, kWh a year", lines.Now.Energy, lines.After?.Energy, CellStyle.Whole);
        saving = Compare(sheet, $"Cost a year, {context.Result.Study.Tariff.Currency}", lines.Now.Cost, lines.After?.Cost, CellStyle.Money);
        firstCost = "0";
        if (context.Option is null) return sheet;
        sheet.Texts(CellStyle.Head, "First cost", context.Option.Option.Name);
        Line(sheet, "Tubes, luminaires, lamps, ballasts", inputs.Parts);
        Line(sheet, "Licensed electrician", $"{inputs.ElectricianHours}*{inputs.ElectricianRate}");
        Line(sheet, "Recycling", inputs.Disposal);
        var row = sheet.RowNumber;
        Line(sheet, "Permits and other fixed sums", inputs.FixedSum);
        Line(sheet, "Contingency", $"SUM(B{row - 2}:B{row})*{inputs.Contingency}");
        Line(sheet, "Incentive", $"-{inputs.Incentive}");
        firstCost = Line(sheet, "First cost", $"SUM(B{row - 2}:B{row + 3})", CellStyle.MoneyStrong);
        return sheet;
    }

    public static void Money(SheetBuilder sheet, CashFlowSheet flow)
    {
        sheet.Texts(CellStyle.Head, "Money", "Value");
        Line(sheet, "Simple payback, years", flow.SimplePayback, CellStyle.Decimal);
        Line(sheet, "Discounted payback, years", flow.DiscountedPayback, CellStyle.Decimal);
        Line(sheet, "Net present value", flow.NetPresentValue);
        Line(sheet, "Internal rate of return (one of them, when there are several)", flow.InternalRate, CellStyle.Percent);
    }

    private static string Compare(SheetBuilder sheet, string name, string now, string? after, CellStyle style)
    {
        sheet.NewRow().Text(name);
        sheet.Formula(now, style);
        if (after is null) return "0";
        sheet.Formula(after, style);
        return sheet.Formula($"B{sheet.RowNumber}-C{sheet.RowNumber}", style);
    }

    private static string Line(SheetBuilder sheet, string name, string formula, CellStyle style = CellStyle.Money)
    {
        sheet.NewRow().Text(name, style == CellStyle.MoneyStrong ? CellStyle.Strong : CellStyle.Text);
        return sheet.Formula(formula, style);
    }
}
