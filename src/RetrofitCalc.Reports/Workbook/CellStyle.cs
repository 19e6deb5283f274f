namespace RetrofitCalc.Reports.Workbook;

/// <summary>Looks of a cell, in the order of the formats in <see cref="WorkbookStyles"/>.</summary>
internal enum CellStyle
{
    Text,
    QuotedText,
    Title,
    Head,
    Strong,
    Whole,
    Decimal,
    Money,
    MoneyStrong,
    Percent,
    Price,
    InputWhole,
    InputDecimal,
    InputMoney,
    InputPercent,
    InputPrice,
    WholeStrong,
    Line,
    StrongLine,
}
