using System.Text;
using CsCheck;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Surveys.Tables;

namespace RetrofitCalc.Files.Tests.Surveys;

public class A_csv_table
{
    private static Parsed<SurveyTable> Read(byte[] bytes) => CsvTable.Read(new MemoryStream(bytes));

    private static Parsed<SurveyTable> Read(string text) => Read(Encoding.UTF8.GetBytes(text));

    [Theory, InlineData(","), InlineData(";"), InlineData("\t"), InlineData("|")]
    public void finds_its_separator(string mark)
    {
        var table = Read($"Area{mark}Count\r\n\"Racks {mark} north\"{mark}12\r\n").Value!;
        Assert.Equal(["Area", "Count"], table.Headers);
        Assert.Equal([$"Racks {mark} north", "12"], Assert.Single(table.Rows).Cells);
    }

    [Fact]
    public void with_decimal_commas_is_parted_by_its_semicolons()
    {
        var table = Read("Area;Height;Watts\nRacks;0,35;57,5\nHall;4,2;112,0\n").Value!;
        Assert.Equal(["Racks", "0,35", "57,5"], table.Rows[0].Cells);
    }

    [Fact]
    public void counts_lines_as_an_editor_does_even_after_cells_with_line_breaks()
    {
        var table = Read("Area,Note\n\n\"A\",\"two\nlines\"\nB,one\n").Value!;
        Assert.Equal([3, 5], table.Rows.Select(r => r.Line));
        Assert.Equal("two\nlines", table.Rows[0].Cells[1]);
    }

    public static TheoryData<string, byte[]> Encodings => new()
    {
        { "UTF-8", Encoding.UTF8.GetBytes("Area,Note\nGänge,½\n") },
        { "UTF-8 with mark", [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes("Area,Note\nGänge,½\n")] },
        { "UTF-16", [0xFF, 0xFE, .. Encoding.Unicode.GetBytes("Area,Note\nGänge,½\n")] },
        { "UTF-16 big end first", [0xFE, 0xFF, .. Encoding.BigEndianUnicode.GetBytes("Area,Note\nGänge,½\n")] },
        { "UTF-16 without mark", Encoding.Unicode.GetBytes("Area,Note\nGänge,½\n") },
    };

    [Theory, MemberData(nameof(Encodings))]
    public void is_read_in_its_encoding(string name, byte[] bytes)
    {
        var table = Read(bytes).Value;
        Assert.True(table is not null, name);
        Assert.Equal(["Area", "Note"], table.Headers);
        Assert.Equal(["Gänge", "½"], table.Rows[0].Cells);
        Assert.Empty(table.Notes);
    }

    [Fact]
    public void that_is_not_utf_8_is_read_as_windows_1252_and_says_so()
    {
        var table = Read([.. Encoding.Latin1.GetBytes("Area,Note\nGänge,"), 0x80, (byte)'\n']).Value!; // 0x80 is the euro sign in Windows-1252
        Assert.Equal(["Gänge", "€"], table.Rows[0].Cells);
        Assert.Contains("Windows-1252", Assert.Single(table.Notes));
    }

    [Fact]
    public void of_a_million_rows_is_refused_after_the_limit_without_reading_on()
    {
        var endless = new RowsStream();
        var problem = Assert.Single(CsvTable.Read(endless).Problems);
        Assert.StartsWith("The table has more than 20,000 rows", problem.Message);
        Assert.True(endless.Given < 10_000_000, $"{endless.Given} bytes were read of an endless file");
    }

    [Theory]
    [InlineData("", "empty")]
    [InlineData("\n\n", "nothing in the table")]
    [InlineData("Area,Count\n", "one row only")]
    [InlineData("PK\u0003\u0004", "workbook")]
    [InlineData("%PDF-1.7", "PDF")]
    [InlineData("Area,Note\nA,\"never closed\nB,2\n", "never closed")]
    public void that_cannot_be_one_says_why(string text, string words)
    {
        var read = Read(text);
        Assert.Null(read.Value);
        Assert.Contains(words, Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void with_cells_past_the_last_heading_says_that_they_were_not_used()
    {
        var table = Read("Area,Note\nRacks,damp, check\nHall,dry\nHall,wet,,\n").Value!;
        Assert.StartsWith("Cells to the right of the last heading were not used: in 1 row, first on line 2 (\" check\").", Assert.Single(table.Notes));
    }

    [Fact]
    public void with_separators_to_the_end_of_a_wide_sheet_has_the_columns_that_hold_something()
    {
        var separators = new string(',', 300);
        Assert.Equal(["Area", "Count"], Read($"Area,Count{separators}\nRacks,12{separators}\n").Value!.Headers);
    }

    [Fact]
    public void in_utf_32_is_refused() =>
        Assert.StartsWith("This is not a text file", Assert.Single(Read([.. Encoding.UTF32.Preamble, .. Encoding.UTF32.GetBytes("Area,Count\nRacks,12\n")]).Problems).Message);

    [Fact]
    public void with_an_open_quotation_mark_names_the_line()
    {
        Assert.Equal(3, Assert.Single(Read("Area,Note\nA,1\nB,\"never closed\nC,2\n").Problems).Line);
        Assert.Contains("characters", Assert.Single(Read("Area\n\"" + new string('x', 3_000_000)).Problems).Message);
    }

    [Fact]
    public void of_zeros_and_other_bytes_is_not_text() =>
        Assert.Contains("not a text file", Assert.Single(Read([1, 0, 0, 2, 3, 0, 0, 0, 9]).Problems).Message);

    [Fact]
    public void of_any_bytes_never_throws()
    {
        Gen.Byte.Array[0, 400].Sample(bytes => Read(bytes) is var r && (r.Value is null) == (r.Problems.Count > 0), iter: 2000);
        Gen.String[Gen.Char["a1,;\t|\"\n\r'= "], 0, 200].Sample(text => Read(text) is var r && (r.Value is null) == (r.Problems.Count > 0), iter: 2000);
    }

    private sealed class RowsStream : MemoryStream
    {
        private static readonly byte[] Row = "Racks,12\n"u8.ToArray();

        public long Given { get; private set; }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            for (var i = 0; i < buffer.Length; i++) buffer[i] = Row[(Given + i) % Row.Length];
            Given += buffer.Length;
            return buffer.Length;
        }
    }
}

public class Text_pasted_from_a_spreadsheet
{
    [Fact]
    public void keeps_cells_with_line_breaks_quotes_and_tabs_whole()
    {
        var cells = PastedTable.Cells("a\t\"two\nlines\"\t\"say \"\"on\"\"\"\r\n\t4\" pipe\t\"4 ft\n").Value!;
        Assert.Equal(["a", "two\nlines", "say \"on\""], cells[0]);
        Assert.Equal(["", "4\" pipe", "\"4 ft"], cells[1]);
        Assert.Equal(2, cells.Count);
    }

    [Fact]
    public void ends_with_an_empty_cell_when_it_ends_with_a_tab() =>
        Assert.Equal(["12", ""], Assert.Single(PastedTable.Cells("12\t").Value!));

    [Fact]
    public void of_one_value_is_one_cell() => Assert.Equal(["12"], Assert.Single(PastedTable.Cells("12").Value!));

    [Fact]
    public void makes_a_table_with_its_first_row_as_headings()
    {
        var table = PastedTable.Read("Area\tCount\nRacks\t12\n").Value!;
        Assert.Equal(["Area", "Count"], table.Headers);
        Assert.Equal(["Racks", "12"], table.Rows[0].Cells);
    }

    [Fact]
    public void never_throws() =>
        Gen.String[Gen.Char["a\t\n\r\"é"], 0, 60].Sample(text => PastedTable.Cells(text).Value is not null && PastedTable.Read(text) is not null, iter: 3000);
}
