namespace RetrofitCalc.Reports.Workbook;

/// <summary>What each charge of the bill costs over the year, now and after: sums over the sheet of lines, all live.</summary>
internal static class BillSheet
{
    public static SheetBuilder Of(WorkbookContext context, BillLinesSheet lines)
    {
        var sheet = new SheetBuilder("Bill", [44, 12, 6, 16, 16, 16, 16, 16], 0);
        sheet.Texts(CellStyle.Title, "Bill");
        if (context is not { Option.Bill: var bill, Summary.Bill: { } words }) return sheet.Texts(CellStyle.Line, "Nothing is proposed yet.");
        sheet.Texts(CellStyle.StrongLine, words.Finding);
        foreach (var sentence in words.Sentences) sheet.Texts(CellStyle.Line, sentence);
        sheet.Texts(CellStyle.Head, "Charge, whole year", "Kind", "No.", "Now", "First year", "Steady year", "Saved, first year", "Saved, steady year");
        var first = sheet.RowNumber + 1;
        foreach (var charge in bill.Charges)
        {
            sheet.NewRow().Text(charge.Name).Text(BillLinesSheet.Kind(charge.Kind)).Number(charge.Charge + 1, CellStyle.Whole);
            var row = sheet.RowNumber;
            foreach (var column in "HJM") sheet.Formula(lines.Sum(column, $"B{row}", $"C{row}"), CellStyle.Money);
            Saved(sheet, CellStyle.Money);
        }
        Totals(sheet, first, sheet.RowNumber);
        Average(sheet, lines, bill.Energy.KilowattHours);
        if (words.Peaks is { } peaks) Peaks(sheet, peaks.Caption, BilledPeak.Of(context.Result, context.Option, context.Text));
        return sheet;
    }

    private static void Saved(SheetBuilder sheet, CellStyle style)
    {
        sheet.Formula($"D{sheet.RowNumber}-E{sheet.RowNumber}", style);
        sheet.Formula($"D{sheet.RowNumber}-F{sheet.RowNumber}", style);
    }

    private static void Totals(SheetBuilder sheet, uint first, uint last)
    {
        sheet.NewRow().Text("Bill of the year", CellStyle.Strong).Skip().Skip();
        foreach (var column in "DEF") sheet.Formula($"SUM({column}{first}:{column}{last})", CellStyle.MoneyStrong);
        Saved(sheet, CellStyle.MoneyStrong);
        sheet.NewRow().Text("of it demand").Skip().Skip();
        foreach (var column in "DEFGH")
            sheet.Formula($"SUMIF(B{first}:B{last},\"demand\",{column}{first}:{column}{last})+SUMIF(B{first}:B{last},\"reactive\",{column}{first}:{column}{last})", CellStyle.Money);
    }

    /// <summary>What one average price would have promised, beside what the bills say.</summary>
    private static void Average(SheetBuilder sheet, BillLinesSheet lines, double savedKilowattHours)
    {
        var total = sheet.RowNumber - 1;
        sheet.Texts(CellStyle.Head, "Against one average price", "", "", "Value");
        void Line(string name, string formula, CellStyle style) => sheet.NewRow().Text(name).Skip().Skip().Formula(formula, style);
        Line("Energy on the meter now, kWh a year", lines.Sum('F', "\"energy\""), CellStyle.Whole);
        sheet.NewRow().Text("Energy saved, kWh a year").Skip().Skip().Number(savedKilowattHours, CellStyle.Whole);
        var row = sheet.RowNumber;
        Line("Average price of a kWh now", $"IF(D{row - 1}>0,D{total}/D{row - 1},0)", CellStyle.Price);
        Line("What it would have promised", $"D{row}*D{row + 1}", CellStyle.Money);
        Line("More than the bills say", $"D{row + 2}-H{total}", CellStyle.Money);
    }

    private static void Peaks(SheetBuilder sheet, string caption, IReadOnlyList<BilledPeak> peaks)
    {
        sheet.Texts(CellStyle.StrongLine, caption);
        sheet.Texts(CellStyle.Head, [BilledPeak.Heads[0], "", "", .. BilledPeak.Heads.Skip(1)]);
        foreach (var peak in peaks)
        {
            sheet.NewRow().Text(peak.Name).Skip().Skip();
            foreach (var power in peak.Values)
                if (power is { } known) sheet.Number(known.Kilowatts, CellStyle.Decimal);
                else sheet.Text(QuantityText.DoesNotApply);
        }
    }
}
