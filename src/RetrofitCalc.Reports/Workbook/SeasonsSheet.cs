using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>Energy and cost by season, as the engine reports them; differences and sums are live.</summary>
internal static class SeasonsSheet
{
    public static SheetBuilder Of(WorkbookContext context)
    {
        var sheet = new SheetBuilder("Seasons", [30, 16, 16, 16, 16, 16], 2);
        sheet.Texts(CellStyle.Title, "Seasons");
        sheet.Texts(CellStyle.Head, "Season", "Lighting now, kWh", "Cost now", "Lighting after, kWh", "Cost after", "Saved");
        var first = sheet.RowNumber + 1;
        foreach (var season in context.Result.Now.Seasons)
            Row(sheet, season, context.Option?.After.Seasons.FirstOrDefault(s => s.Name == season.Name) ?? season);
        var last = sheet.RowNumber;
        sheet.NewRow().Text("Year", CellStyle.Strong);
        for (var column = 1; column <= 5; column++)
            sheet.Formula($"SUM({SheetBuilder.Reference(column, first)}:{SheetBuilder.Reference(column, last)})", column is 1 or 3 ? CellStyle.WholeStrong : CellStyle.MoneyStrong);
        return sheet;
    }

    private static void Row(SheetBuilder sheet, ShareFigures now, ShareFigures after)
    {
        sheet.NewRow().Text(now.Name);
        sheet.Number(now.Lighting.KilowattHours, CellStyle.Whole);
        sheet.Number(now.Cost.Units, CellStyle.Money);
        sheet.Number(after.Lighting.KilowattHours, CellStyle.Whole);
        sheet.Number(after.Cost.Units, CellStyle.Money);
        sheet.Formula($"C{sheet.RowNumber}-E{sheet.RowNumber}", CellStyle.Money);
    }
}
