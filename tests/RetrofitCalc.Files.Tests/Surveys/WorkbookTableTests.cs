using System.Globalization;
using System.IO.Compression;
using CsCheck;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Workbooks;

namespace RetrofitCalc.Files.Tests.Surveys;

public class A_workbook_table
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-US");

    private static Parsed<SurveyTable> Read(byte[] file, string culture = "en-US", string? sheet = null) =>
        WorkbookTable.Read(new MemoryStream(file), CultureInfo.GetCultureInfo(culture), sheet);

    private const string Heads = "<row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Area</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>Count</t></is></c></row>";

    [Fact]
    public void reads_shared_inline_and_formatted_texts_numbers_and_gaps()
    {
        var table = Read(Workbooks.OneSheet(
            "<row r=\"1\"><c r=\"A1\" t=\"s\"><v>0</v></c><c r=\"C1\" t=\"s\"><v>1</v></c></row>" +
            "<row r=\"4\"><c r=\"A4\" t=\"s\"><v>2</v></c><c r=\"B4\"><v>0.30000000000000004</v></c><c r=\"C4\" t=\"b\"><v>1</v></c></row>",
            shared: "<si><t>Area</t></si><si><t>Exit</t></si><si><r><t>Seedling </t></r><r><t>racks</t></r></si>")).Value!;
        Assert.Equal(["Area", "", "Exit"], table.Headers);
        var row = Assert.Single(table.Rows);
        Assert.Equal(4, row.Line);
        Assert.Equal(["Seedling racks", "0.3", "yes"], row.Cells);
        Assert.Empty(table.Notes);
    }

    [Fact]
    public void writes_numbers_with_the_decimal_mark_of_the_user()
    {
        var file = Workbooks.OneSheet(Heads + "<row r=\"2\"><c r=\"A2\"><v>1234.5</v></c></row>");
        Assert.Equal("1234,5", Read(file, "de-DE").Value!.Rows[0].Cells[0]);
        Assert.Equal("1234.5", Read(file).Value!.Rows[0].Cells[0]);
    }

    // Day 44270 is 15 March 2021 in the 1900 system, day 42808 in the 1904 system (ECMA-376 part 1, 18.17.4.1; recomputed: 1899-12-30 + 44270 d).
    [Theory, InlineData(1, 44270, ""), InlineData(2, 44270.75, ""), InlineData(1, 42808, "<workbookPr date1904=\"1\"/>")]
    public void writes_dates_as_iso(int style, double day, string workbook)
    {
        var cell = FormattableString.Invariant($"<row r=\"2\"><c r=\"A2\" s=\"{style}\"><v>{day}</v></c></row>");
        Assert.Equal("2021-03-15", Read(Workbooks.OneSheet(Heads + cell, workbookExtra: workbook)).Value!.Rows[0].Cells[0]);
    }

    [Fact]
    public void takes_no_number_for_a_date_because_its_format_has_a_d_in_quotation_marks() =>
        Assert.Equal("12", Read(Workbooks.OneSheet(Heads + "<row r=\"2\"><c r=\"A2\" s=\"3\"><v>12</v></c></row>")).Value!.Rows[0].Cells[0]);

    [Fact]
    public void takes_the_stored_value_of_formulas_and_says_so()
    {
        var table = Read(Workbooks.OneSheet(Heads +
            "<row r=\"2\"><c r=\"A2\" t=\"str\"><f>\"Racks\"</f><v>Racks</v></c><c r=\"B2\"><f>6*2</f><v>12</v></c></row>" +
            "<row r=\"3\"><c r=\"A3\"><v>1</v></c><c r=\"B3\"><f>1+1</f></c></row>")).Value!;
        Assert.Equal(["Racks", "12"], table.Rows[0].Cells);
        Assert.Equal("", table.Rows[1].Cell(1));
        Assert.Equal("3 cells (A2, B2, B3) each hold a formula; the value stored with it was taken.", table.Notes[0]);
        Assert.StartsWith("Cell B3 holds a formula without a stored value", table.Notes[1]);
    }

    [Fact]
    public void takes_merged_cells_for_the_first_of_them_and_says_so()
    {
        var table = Read(Workbooks.OneSheet(Heads +
            "<row r=\"2\"><c r=\"A2\" t=\"str\"><v>Racks</v></c><c r=\"B2\"><v>1</v></c></row><row r=\"3\"><c r=\"B3\"><v>2</v></c></row>",
            "<mergeCells count=\"1\"><mergeCell ref=\"A2:A3\"/></mergeCells>")).Value!;
        Assert.Equal("", table.Rows[1].Cell(0));
        Assert.Contains("Merged cells (A2:A3)", Assert.Single(table.Notes));
    }

    [Fact]
    public void is_read_from_the_sheet_one_chooses()
    {
        var file = Workbooks.TwoSheets(Heads + "<row r=\"2\"><c r=\"A2\"><v>1</v></c></row>", Heads + "<row r=\"2\"><c r=\"A2\"><v>2</v></c></row>");
        Assert.Equal(["Rooms", "Hall"], WorkbookTable.Sheets(new MemoryStream(file)).Value!);
        Assert.Equal("2", Read(file, sheet: "Hall").Value!.Rows[0].Cells[0]);
        Assert.Contains("also has: Hall", Assert.Single(Read(file).Value!.Notes));
        Assert.Contains("has no sheet \"Cellar\"", Assert.Single(Read(file, sheet: "Cellar").Problems).Message);
    }

    [Fact]
    public void keeps_html_and_formula_like_text_as_text()
    {
        var cells = "<row r=\"2\"><c r=\"A2\" t=\"inlineStr\"><is><t>&lt;b&gt;x&lt;/b&gt;</t></is></c><c r=\"B2\" t=\"inlineStr\"><is><t>=1+1</t></is></c></row>";
        Assert.Equal(["<b>x</b>", "=1+1"], Read(Workbooks.OneSheet(Heads + cells)).Value!.Rows[0].Cells);
    }

    [Fact]
    public void that_is_a_zip_bomb_is_refused_unread()
    {
        using var file = new MemoryStream();
        using (var zip = new ZipArchive(file, ZipArchiveMode.Create, leaveOpen: true))
        {
            using var part = zip.CreateEntry("xl/worksheets/sheet1.xml").Open();
            var zeros = new byte[1024 * 1024];
            for (var i = 0; i < 250; i++) part.Write(zeros);
        }
        Assert.True(file.Length < 1_000_000);
        Assert.Contains("unpacks to more than 200 MB", Assert.Single(Read(file.ToArray()).Problems).Message);
    }

    [Fact]
    public void with_too_many_rows_or_columns_is_refused()
    {
        var rows = string.Concat(Enumerable.Range(2, 20_001).Select(r => $"<row r=\"{r}\"><c r=\"A{r}\"><v>1</v></c></row>"));
        Assert.StartsWith("The table has more than 20,000 rows", Assert.Single(Read(Workbooks.OneSheet(Heads + rows)).Problems).Message);
        Assert.Contains("200 columns", Assert.Single(Read(Workbooks.OneSheet(Heads + "<row r=\"2\"><c r=\"XFD2\"><v>1</v></c></row>")).Problems).Message);
    }

    /// <summary>The workbook library calls itself once for every level: such a file would end the program for everyone it serves.</summary>
    [Theory, InlineData("xl/sharedStrings.xml", "sst"), InlineData("xl/styles.xml", "styleSheet"), InlineData("xl/worksheets/sheet1.xml", "worksheet")]
    public void nested_without_end_is_refused(string part, string root)
    {
        const int levels = 100_000;
        var nested = string.Concat(Enumerable.Repeat("<r>", levels)) + string.Concat(Enumerable.Repeat("</r>", levels));
        var file = Workbooks.Replace(Workbooks.OneSheet(Heads), part, $"<{root} xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\">{nested}</{root}>");
        Assert.Contains("in a way no spreadsheet writes", Assert.Single(Read(file).Problems).Message);
    }

    [Fact]
    public void with_a_million_styles_is_refused()
    {
        var styles = string.Concat(Enumerable.Range(0, 1_000_000).Select(i => $"<xf fontId=\"{i * 7919 % 1_000_003}\"/>"));
        var file = Workbooks.Replace(Workbooks.OneSheet(Heads), "xl/styles.xml", $"<styleSheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><cellXfs>{styles}</cellXfs></styleSheet>");
        Assert.Contains("in a way no spreadsheet writes", Assert.Single(Read(file).Problems).Message);
    }

    [Fact]
    public void formatted_to_the_end_of_the_sheet_has_the_columns_that_hold_something()
    {
        var table = Read(Workbooks.OneSheet(Heads + "<row r=\"2\"><c r=\"A2\"><v>1</v></c><c r=\"XFD2\" s=\"1\"/></row>")).Value!;
        Assert.Equal(["1"], Assert.Single(table.Rows).Cells);
    }

    [Fact]
    public void that_names_outside_entities_is_refused()
    {
        var file = Workbooks.Make(new Dictionary<string, string>
        {
            ["xl/worksheets/sheet1.xml"] = "<!DOCTYPE x [<!ENTITY e SYSTEM \"file:///etc/hostname\">]><worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData><row r=\"1\"><c t=\"str\"><v>&e;</v></c></row></sheetData></worksheet>",
            ["xl/sharedStrings.xml"] = "<sst xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"/>",
        }, "<sheet name=\"Survey\" sheetId=\"1\" r:id=\"rId1\"/>", "");
        Assert.Contains("damaged", Assert.Single(Read(file).Problems).Message);
    }

    [Fact]
    public void of_another_kind_of_file_says_so()
    {
        Assert.Contains("old XLS format", Assert.Single(Read([0xD0, 0xCF, 0x11, 0xE0, 0, 0]).Problems).Message);
        Assert.Contains("not an XLSX", Assert.Single(Read("Area,Count"u8.ToArray()).Problems).Message);
        Assert.Contains("empty", Assert.Single(Read([]).Problems).Message);
    }

    [Fact]
    public void damaged_anywhere_never_throws()
    {
        var good = Workbooks.OneSheet(Heads + "<row r=\"2\"><c r=\"A2\" t=\"s\"><v>0</v></c><c r=\"B2\" s=\"1\"><v>44270</v></c></row>", shared: "<si><t>Racks</t></si>");
        Assert.NotNull(Read(good).Value);
        Gen.Select(Gen.Int[0, good.Length - 1], Gen.Byte).Array[1, 4].Sample(changes =>
        {
            var bytes = good.ToArray();
            foreach (var (at, value) in changes) bytes[at] = value;
            return Read(bytes) is var r && (r.Value is not null || r.Problems.Count > 0);
        }, iter: 1500, threads: 1);
        for (var length = 0; length < good.Length; length += 97)
            Assert.NotEmpty(Read(good[..length]).Problems);
    }

    [Fact]
    public void with_nonsense_in_its_cells_never_throws() =>
        Gen.String[Gen.Char["<>/crvt=\"s0129AZ &;-. "], 0, 60].Sample(text =>
            Read(Workbooks.OneSheet(Heads + "<row r=\"2\">" + text + "</row>")) is var r && (r.Value is not null || r.Problems.Count > 0), iter: 300, threads: 1);

    [Fact]
    public void with_changed_letters_in_its_sheet_or_texts_never_throws()
    {
        const string sheet = Heads + "<row r=\"2\" spans=\"1:2\"><c r=\"A2\" t=\"s\" s=\"1\"><f>1+1</f><v>0</v></c><c r=\"B2\" s=\"2\"><v>44270</v></c></row>";
        const string shared = "<si><t xml:space=\"preserve\">Racks</t></si>";
        Gen.Select(Gen.Int[0, sheet.Length + shared.Length - 1], Gen.Char["<>/\"=-9 a&"]).Array[1, 3].Sample(changes =>
        {
            var text = (sheet + shared).ToCharArray();
            foreach (var (at, letter) in changes) text[at] = letter;
            var read = Read(Workbooks.OneSheet(new string(text, 0, sheet.Length), shared: new string(text, sheet.Length, shared.Length)));
            return read.Value is not null || read.Problems.Count > 0;
        }, iter: 800, threads: 1);
    }

    [Fact]
    public void or_csv_is_told_apart_by_its_first_bytes()
    {
        Assert.NotNull(SurveyFile.Read(new MemoryStream(Workbooks.OneSheet(Heads + "<row r=\"2\"><c><v>1</v></c></row>")), English).Value);
        Assert.NotNull(SurveyFile.Read(new MemoryStream("Area,Count\nA,1\n"u8.ToArray()), English).Value);
        Assert.Contains("empty", Assert.Single(SurveyFile.Read(new MemoryStream(), English).Problems).Message);
    }
}
