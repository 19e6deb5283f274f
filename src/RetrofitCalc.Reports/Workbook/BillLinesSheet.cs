using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Workbook;

/// <summary>Every line of the three years of bills, rounded as the tariff says. What is saved is live.</summary>
internal sealed class BillLinesSheet
{
    private const string Name = "Bill lines";
    private readonly uint _first;
    private readonly uint _last;

    public BillLinesSheet(WorkbookContext context)
    {
        Sheet.Texts(CellStyle.Title, Name);
        Sheet.Texts(CellStyle.Head, "Month", "Kind", "No.", "Line", "Unit", "Quantity now", "Price now", "Amount now",
            "Quantity, first year", "Amount, first year", "Quantity, steady year", "Price, steady year", "Amount, steady year", "Saved, first year", "Saved, steady year");
        _first = Sheet.RowNumber + 1;
        foreach (var line in context.Option is { } option ? BillLineTriple.Of(context.Result.Now, option) : []) Row(line);
        _last = Sheet.RowNumber;
    }

    public SheetBuilder Sheet { get; } = new(Name, [11, 12, 6, 30, 9, 13, 11, 14, 13, 14, 13, 11, 14, 13, 13], 2);

    /// <summary>Formula of the sum of a column's amounts under one charge.</summary>
    /// <param name="column">H now, J in the first year, M in a steady year; F, I and K for quantities.</param>
    /// <param name="kind">Cell or quoted text of the kind of charge.</param>
    /// <param name="number">Cell of the charge's number; null for all of the kind.</param>
    public string Sum(char column, string kind, string? number = null) =>
        $"SUMIFS({Column(column)},{Column('B')},{kind}{(number is null ? "" : $",{Column('C')},{number}")})";

    public static string Kind(BillLineKind kind) => kind.ToString().ToLowerInvariant();

    private string Column(char column) => $"'{Name}'!${column}${_first}:${column}${_last}";

    private void Row(BillLineTriple line)
    {
        Sheet.NewRow().Text(NodaTime.Text.YearMonthPattern.Iso.Format(line.Month)).Text(Kind(line.Any.Kind));
        var row = Sheet.RowNumber;
        Sheet.Number(line.Any.Charge + 1, CellStyle.Whole);
        Sheet.Text(line.Any.Name).Text(line.Any.Unit);
        Side(line.Now, price: true);
        Side(line.FirstYear, price: false);
        Side(line.After, price: true);
        Sheet.Formula($"H{row}-J{row}", CellStyle.Money);
        Sheet.Formula($"H{row}-M{row}", CellStyle.Money);
    }

    private void Side(BillLine? line, bool price)
    {
        Sheet.Number(line?.Quantity ?? 0, CellStyle.Decimal);
        if (price) Sheet.Number(line?.UnitPrice ?? 0, CellStyle.Price);
        Sheet.Number(line?.Amount.Units ?? 0, CellStyle.Money);
    }
}
