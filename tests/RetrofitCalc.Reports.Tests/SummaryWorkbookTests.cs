using DocumentFormat.OpenXml.Packaging;
using DocumentFormat.OpenXml.Spreadsheet;
using DocumentFormat.OpenXml.Validation;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports.Tests;

public class Summary_workbook
{
    private const double HalfACent = 0.005;

    /// <summary>LibreOffice Calc is the independent calculator: its NPV, IRR and sums against the engine's.</summary>
    [Theory, InlineData(0), InlineData(1), InlineData(2), InlineData(3)]
    public void recalculated_by_LibreOffice_equals_the_engine_to_the_cent(int number)
    {
        var result = Samples.Quillmere;
        var option = result.Options[number];
        using var book = new RecalculatedWorkbook(Book(result, option.Option.Id));
        Assert.Equal(result.Now.Site.Connected.Watts, book.Number("Summary", "Connected load, W"), 1e-6);
        Assert.Equal(option.After.Site.Connected.Watts, book.Number("Summary", "Connected load, W", 2), 1e-6);
        Assert.Equal(option.After.Site.Lighting.KilowattHours, book.Number("Summary", "Lighting energy, kWh a year", 2), 1e-6);
        Assert.Equal(result.Now.Site.Cost.Units, book.Number("Summary", "Cost a year, USD"), HalfACent);
        Assert.Equal(option.AnnualBillSaving.Units, book.Number("Summary", "Cost a year, USD", 3), HalfACent);
        Assert.Equal(option.FirstCost.Total.Units, FirstCost(book), HalfACent);
        Assert.Equal(option.NetPresentValue.Units, book.Number("Summary", "Net present value"), HalfACent);
        SamePayback(option.SimplePayback, book.Text("Summary", "Simple payback, years"));
        SamePayback(option.DiscountedPayback, book.Text("Summary", "Discounted payback, years"));
        SameFlows(option, book);
        SameBill(option.Bill, book);
        SameRate(option, book.Text("Summary", "Internal rate of return (one of them, when there are several)"));
    }

    [Fact]
    public void counts_what_a_ratchet_keeps_back_in_the_first_year()
    {
        var option = Samples.Ratcheted.Chosen!;
        Assert.True(option.Bill.Demand > option.Bill.FirstYearDemand);
        using var book = new RecalculatedWorkbook(Book(Samples.Ratcheted, null));
        SameBill(option.Bill, book);
        SameFlows(option, book);
        Assert.Equal(option.NetPresentValue.Units, book.Number("Summary", "Net present value"), HalfACent);
    }

    [Fact]
    public void says_never_where_the_money_does_not_come_back()
    {
        var result = Samples.Crowded;
        using var book = new RecalculatedWorkbook(Book(result, result.Chosen!.Option.Id));
        Assert.Equal("never in 10 years", book.Text("Summary", "Simple payback, years"));
    }

    [Fact]
    public void follows_its_input_cells()
    {
        var bytes = Changed(Book(Samples.Quillmere, null), "Factor on all hours lit", 2);
        using var book = new RecalculatedWorkbook(bytes);
        Assert.Equal(2 * Samples.Quillmere.Now.Site.Lighting.KilowattHours, book.Number("Summary", "Lighting energy, kWh a year"), 1e-6);
    }

    [Fact]
    public void is_valid_for_the_office_schemas()
    {
        using var book = SpreadsheetDocument.Open(new MemoryStream(Book(Samples.Crowded, null)), false);
        var errors = new OpenXmlValidator(DocumentFormat.OpenXml.FileFormatVersions.Office2019).Validate(book);
        Assert.Empty(errors.Select(e => $"{e.Path?.XPath}: {e.Description}"));
    }

    [Fact]
    public void freezes_heads_draws_the_cash_flow_and_computes_when_opened()
    {
        using var book = SpreadsheetDocument.Open(new MemoryStream(Book(Samples.Quillmere, null)), false);
        Assert.True(book.WorkbookPart!.Workbook!.CalculationProperties!.FullCalculationOnLoad!.Value);
        Assert.Equal(["Summary", "Inputs", "Lines", "Seasons", "Bill", "Bill lines", "Cash flow", "Light", "Sources"], book.WorkbookPart.Workbook.Descendants<Sheet>().Select(s => s.Name!.Value!));
        Assert.Single(book.WorkbookPart.WorksheetParts, part => part.DrawingsPart?.ChartParts.Count() == 1);
        Assert.Equal(6, book.WorkbookPart.WorksheetParts.Count(part => part.Worksheet!.Descendants<Pane>().Any(pane => pane.State!.Value == PaneStateValues.Frozen)));
    }

    [Fact]
    public void keeps_typed_text_that_looks_like_a_formula_as_text()
    {
        var result = Samples.WithFirstLineNamed("=HYPERLINK(\"http://example.invalid\",\"x\")");
        using var book = SpreadsheetDocument.Open(new MemoryStream(Book(result, null)), false);
        var cell = book.WorkbookPart!.WorksheetParts.SelectMany(part => part.Worksheet!.Descendants<Cell>()).First(c => c.InnerText.StartsWith("=HYPERLINK", StringComparison.Ordinal));
        Assert.Null(cell.CellFormula);
        Assert.Equal(CellValues.InlineString, cell.DataType!.Value);
        var format = book.WorkbookPart.WorkbookStylesPart!.Stylesheet!.CellFormats!.Elements<CellFormat>().ElementAt((int)cell.StyleIndex!.Value);
        Assert.True(format.QuotePrefix!.Value);
    }

    private static byte[] Book(StudyResult result, string? option)
    {
        using var bytes = new MemoryStream();
        SummaryWorkbook.Write(BudgetSummary.From(result, Samples.Request with { Option = option }), result, bytes);
        return bytes.ToArray();
    }

    /// <summary>The last "First cost" of the first column: the heading comes before the sum.</summary>
    private static double FirstCost(RecalculatedWorkbook book) =>
        double.Parse(book.Rows("Summary").Last(row => row.Count > 1 && row[0] == "First cost")[1], System.Globalization.CultureInfo.InvariantCulture);

    private static byte[] Changed(byte[] workbook, string label, double value)
    {
        using var bytes = new MemoryStream();
        bytes.Write(workbook);
        using (var book = SpreadsheetDocument.Open(bytes, true))
        {
            var row = book.WorkbookPart!.WorksheetParts.SelectMany(part => part.Worksheet!.Descendants<Row>()).First(r => r.InnerText.StartsWith(label, StringComparison.Ordinal));
            row.Elements<Cell>().ElementAt(1).CellValue = new CellValue(value);
        }
        return bytes.ToArray();
    }

    private static void SamePayback(Payback engine, string book)
    {
        if (engine.Years is { } years) Assert.Equal(years, double.Parse(book, System.Globalization.CultureInfo.InvariantCulture), 1e-6);
        else Assert.Equal("never in 10 years", book);
    }

    private static void SameBill(BillSaving bill, RecalculatedWorkbook book)
    {
        foreach (var charge in bill.Charges)
            Assert.Equal(charge.Saving.Units, book.Number("Bill", charge.Name, 7), HalfACent);
        Assert.Equal(bill.FirstYearTotal.Units, book.Number("Bill", "Bill of the year", 6), HalfACent);
        Assert.Equal(bill.Total.Units, book.Number("Bill", "Bill of the year", 7), HalfACent);
        Assert.Equal(bill.FirstYearDemand.Units, book.Number("Bill", "of it demand", 6), HalfACent);
        Assert.Equal(bill.Demand.Units, book.Number("Bill", "of it demand", 7), HalfACent);
        Assert.Equal(bill.BlendedTotal!.Value.Units, book.Number("Bill", "What it would have promised", 3), HalfACent);
    }

    private static void SameFlows(OptionResult option, RecalculatedWorkbook book)
    {
        foreach (var year in option.CashFlow)
        {
            var label = year.Year.ToString(System.Globalization.CultureInfo.InvariantCulture);
            Assert.Equal(year.Cumulative.Units, book.Number("Cash flow", label, 6), HalfACent);
            Assert.Equal(year.CumulativeDiscounted.Units, book.Number("Cash flow", label, 8), HalfACent);
        }
    }

    /// <summary>Where there are several rates a spreadsheet finds one of them; where there is none it finds none.</summary>
    private static void SameRate(OptionResult option, string book)
    {
        if (option.InternalRates.Count == 0) Assert.Equal("none found", book);
        else Assert.Contains(option.InternalRates, rate => Math.Abs(rate - double.Parse(book, System.Globalization.CultureInfo.InvariantCulture)) < 1e-6);
    }
}
