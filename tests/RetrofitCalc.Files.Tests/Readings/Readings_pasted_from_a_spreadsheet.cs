using System.Globalization;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Readings;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Tests.Readings;

public class Readings_pasted_from_a_spreadsheet
{
    private static readonly CultureInfo American = CultureInfo.GetCultureInfo("en-US");
    private static readonly CultureInfo German = CultureInfo.GetCultureInfo("de-DE");

    private static Parsed<ReadingGrid> Read(string text, CultureInfo? culture = null, LengthUnit own = LengthUnit.Metres) => ReadingsText.Parse(text, culture ?? American, own);

    private static ReadingGrid Whole(Parsed<ReadingGrid> read)
    {
        Assert.Empty(read.Problems);
        return read.Value!;
    }

    [Theory]
    [InlineData("120.5\t118\n117\t1,121\n", "en-US")]
    [InlineData("120.5,118\r\n117,1121", "en-US")]
    [InlineData("120,5;118\n117;1121", "de-DE")]
    [InlineData("120,5\t118\n117\t1.121", "de-DE")]
    [InlineData("120.5 118\n117   1121", "en-US")]
    [InlineData("\"120.5\"|118\n117|1121\n\n", "en-US")]
    public void are_parted_by_tabs_semicolons_commas_bars_or_spaces(string text, string culture) =>
        Assert.Equal([[120.5, 118], [117, 1121]], Whole(Read(text, CultureInfo.GetCultureInfo(culture))).Values);

    [Fact]
    public void take_a_comma_before_one_or_two_digits_as_a_decimal_and_one_before_three_as_the_site_does() =>
        Assert.Equal([[250.5, 1234], [7.25, 240]], Whole(Read("250,5\t1,234\n7,25\t240")).Values);

    [Fact]
    public void keep_blanks_in_their_place_and_leave_out_the_empty_end()
    {
        var grid = Whole(Read("\t118\t\t\n117\t\t–\t\n\t\t\t\n"));
        Assert.Equal([[null, 118, null], [117, null, null]], grid.Values);
        Assert.Equal((null, null), (grid.Columns, grid.Rows));
    }

    [Fact]
    public void name_every_bad_cell_by_row_and_column_and_keep_what_was_typed_and_the_rest()
    {
        var read = Read("120\tabout 118\t119\n-5\t117\t1,5678\n");
        Assert.Equal([(1, 2), (2, 1), (2, 3)], read.Problems.Select(problem => (problem.Line!.Value, problem.Column!.Value)));
        Assert.Equal(
            ["\"about 118\" is not a number. Type digits, such as 1.5 for one and a half.", "\"-5\" is negative; a reading is zero or more."],
            read.Problems.Take(2).Select(problem => problem.Message));
        Assert.Contains("\"1,5678\" could mean two things", read.Problems[2].Message);
        Assert.Equal([[120, null, 119], [null, 117, null]], read.Value!.Values);
        Assert.Equal("about 118", read.Value.Cells[0][1].Typed);
    }

    [Fact]
    public void take_places_in_the_unit_the_corner_names()
    {
        var grid = Whole(Read("lx (cm)\t-30\t0\t30\n-15\t6500\t7000\t6510\n15\t6400\t6900\t6420"));
        Assert.Equal([-0.3, 0, 0.3], grid.Columns);
        Assert.Equal([-0.15, 0.15], grid.Rows);
        Assert.Equal([[6500, 7000, 6510], [6400, 6900, 6420]], grid.Values);
        Assert.Equal(LightUnit.Lux, grid.Unit);
    }

    [Theory]
    [InlineData("PPFD in µmol m⁻² s⁻¹", LightUnit.Micromoles)]
    [InlineData("µmol/m²/s", LightUnit.Micromoles)]
    [InlineData("readings, fc, in inches", LightUnit.FootCandles)]
    [InlineData("y / x", null)]
    public void are_in_the_unit_of_light_the_corner_names_and_take_no_metre_from_it(string corner, LightUnit? unit)
    {
        var grid = Whole(Read($"{corner}\t12\t24\n12\t120\t118\n", own: LengthUnit.Inches));
        Assert.Equal(unit, grid.Unit);
        Assert.Equal([0.3048, 0.6096], grid.Columns!, (a, b) => Math.Abs(a - b) < 1e-12);
    }

    // 1 ft 6 in = 0.4572 m
    [Theory]
    [InlineData("\t-1 ft 6 in\t0 in\t18\"\n0\t120\t150\t121", new[] { -0.4572, 0, 0.4572 })]
    [InlineData("\t−300 mm\t0\t30 cm\n0\t120\t150\t121", new[] { -0.3, 0, 0.3 })]
    public void take_places_with_their_own_unit_and_a_sign(string text, double[] places) =>
        Assert.Equal(places, Whole(Read(text)).Columns!, (a, b) => Math.Abs(a - b) < 1e-12);

    [Fact]
    public void take_a_heading_row_or_column_alone_by_its_units()
    {
        var row = Whole(Read("-30 cm;0 cm;30 cm\n120;150;121\n118;149;119"));
        Assert.Equal([-0.3, 0, 0.3], row.Columns);
        Assert.Null(row.Rows);
        Assert.Equal([[120, 150, 121], [118, 149, 119]], row.Values);
        var column = Whole(Read("0 cm;120;150\n30 cm;118;149"));
        Assert.Null(column.Columns);
        Assert.Equal([0, 0.3], column.Rows);
        Assert.Equal([[120, 150], [118, 149]], column.Values);
    }

    [Fact]
    public void that_begin_with_zero_on_both_sides_of_a_blank_corner_begin_with_places()
    {
        var grid = Whole(Read("\t0\t15\t30\n0\t120\t115\t90\n15\t110\t100\t80", own: LengthUnit.Centimetres));
        Assert.Equal([0, 0.15, 0.3], grid.Columns);
        Assert.Equal([[120, 115, 90], [110, 100, 80]], grid.Values);
    }

    [Fact]
    public void under_a_blank_corner_without_any_sign_of_places_are_all_readings() =>
        Assert.Equal([[null, 118, 119], [117, 121, 122]], Whole(Read("\t118\t119\n117\t121\t122")).Values);

    [Fact]
    public void drawn_with_the_far_row_on_top_are_turned_round_so_that_places_rise()
    {
        var grid = Whole(Read("m\t0.2\t-0.2\n0.1\t1\t2\n-0.1\t3\t4"));
        Assert.Equal([-0.2, 0.2], grid.Columns);
        Assert.Equal([-0.1, 0.1], grid.Rows);
        Assert.Equal([[4, 3], [2, 1]], grid.Values);
    }

    [Fact]
    public void along_lines_outwards_have_directions_for_rows()
    {
        var grid = Whole(Read("m\t0\t0.1\t0.2\n0°\t200\t185\t150\n90 deg\t198\t184\t151"));
        Assert.True(grid.RowsAreDirections);
        Assert.Equal([0, 90], grid.Rows);
    }

    [Fact]
    public void with_a_place_that_is_none_keep_their_readings_and_leave_the_places_open()
    {
        var read = Read("cm\t-30\tmiddle\t30\n0\t120\t150\t121");
        Assert.StartsWith("\"middle\" is not a place.", Assert.Single(read.Problems).Message);
        Assert.Equal((1, 3), (read.Problems[0].Line!.Value, read.Problems[0].Column!.Value));
        Assert.Null(read.Value!.Columns);
        Assert.Equal([[120, 150, 121]], read.Value.Values);
        Assert.Contains("given twice", Assert.Single(Read("cm\t0\t0\n0\t1\t2").Problems).Message);
    }

    [Theory]
    [InlineData("", "There are no readings in this text.")]
    [InlineData(" \n\t\t\n", "There are no readings in this text.")]
    [InlineData("cm\t0\t10\n", "There are places in this text, but no readings.")]
    public void that_are_none_say_so(string text, string message)
    {
        var read = Read(text);
        Assert.Null(read.Value);
        Assert.Equal(message, Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void beyond_ten_thousand_are_refused_whole()
    {
        var row = string.Join('\t', Enumerable.Repeat("1", 101));
        Assert.NotNull(Read(string.Join('\n', Enumerable.Repeat(row, 99))).Value);
        var read = Read(string.Join('\n', Enumerable.Repeat(row, 100)));
        Assert.Null(read.Value);
        Assert.Contains("more than 10,000 readings", Assert.Single(read.Problems).Message);
    }

    [Fact]
    public void with_a_point_are_refused_where_the_comma_is_the_decimal_mark() =>
        Assert.Contains("\"120.5\" could mean two things. Type 1,5 for one and a half", Assert.Single(Read("120.5", German).Problems).Message);
}
