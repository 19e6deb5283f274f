using System.Globalization;
using System.Text;
using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Readings;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Tests.Readings;

public class Readings_as_CSV
{
    private static readonly ReadingSet Set = new()
    {
        Id = "low", Pattern = ReadingPattern.Crossings, Unit = LightUnit.Lux, Conversion = new(74, 0.07, Provenance.None), Height = Length.FromMetres(0.3),
        Columns = [-0.6, 0, 0.6], Rows = [-0.3, 0.3], Values = [[6500.5, null, 6400], [6300, 7000, 6350]],
    };

    private static Parsed<ReadingGrid> Read(byte[] file, string culture = "en-US") => ReadingsCsv.Read(new MemoryStream(file), CultureInfo.GetCultureInfo(culture), LengthUnit.Inches);

    private static Parsed<ReadingSet> Into(ReadingSet set, string text, AreaLight? bench = null) =>
        ReadingPlaces.Into(set, ReadingsText.Parse(text, CultureInfo.InvariantCulture, LengthUnit.Metres).Value!, bench);

    [Fact]
    public void name_their_units_in_the_corner() =>
        Assert.Equal("\uFEFFlx (m),-0.6,0,0.6\r\n-0.3,6500.5,,6400\r\n0.3,6300,7000,6350\r\n", Encoding.UTF8.GetString(ReadingsCsv.Write(Set, CultureInfo.GetCultureInfo("en-US"))));

    [Fact]
    public void are_parted_by_semicolons_where_the_comma_is_the_decimal_mark() =>
        Assert.Contains("\r\n-0,3;6500,5;;6400\r\n", Encoding.UTF8.GetString(ReadingsCsv.Write(Set, CultureInfo.GetCultureInfo("de-DE"))));

    [Theory, InlineData("en-US"), InlineData("de-DE"), InlineData("fr-FR")]
    public void come_back_as_the_same_set(string culture)
    {
        var number = Gen.Int[0, 20_000_000].Select(n => n / 100.0);
        var place = Gen.Int[1, 300].Array[1, 6].Select(steps => steps.Aggregate((List<double>)[], (list, step) => [.. list, Math.Round((list.Count == 0 ? -2.5 : list[^1]) + step / 1000.0, 3)]));
        Gen.Select(place, place, Gen.Enum<LightUnit>(), Gen.Enum<ReadingPattern>()).SelectMany((x, y, unit, pattern) =>
            Gen.Select(Gen.Bool, number, (some, value) => some ? value : (double?)null).Array[x.Count].Array[y.Count].Select(values => (x, y, unit, pattern, values))).Sample(t =>
        {
            var (x, y, unit, pattern, values) = t;
            var set = Set with { Columns = x, Rows = y, Unit = unit, Pattern = pattern, Values = values };
            if (values.All(row => row.All(value => value is null))) return;
            var grid = Read(ReadingsCsv.Write(set, CultureInfo.GetCultureInfo(culture)), culture);
            Assert.Empty(grid.Problems);
            var again = ReadingPlaces.Into(Set with { Pattern = pattern }, grid.Value!, null).Value!;
            Assert.Equal((unit, pattern), (again.Unit, again.Pattern));
            Assert.Equal(x, again.Columns, (a, b) => Math.Abs(a - b) < 1e-12);
            Assert.Equal(y, again.Rows, (a, b) => Math.Abs(a - b) < 1e-12);
            Assert.Equal(values.Select(row => row.ToList()), again.Values.Select(row => row.ToList()));
        }, iter: 100);
    }

    [Fact]
    public void that_are_a_picture_or_a_workbook_are_refused()
    {
        Assert.Contains("not a text file", Assert.Single(Read([0x89, 0x50, 0, 0, 1, 0, 0, 7]).Problems).Message);
        Assert.Null(Read([0xFF, 0xFE, 0x31]).Value);
    }

    /// <summary>Three cells over 1.2 m have their middles at −0.4, 0 and 0.4 m; two over 0.6 m at −0.15 and 0.15 m.</summary>
    [Fact]
    public void without_places_lie_evenly_over_the_bench()
    {
        var bench = new AreaLight { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6) };
        var empty = Set with { Columns = [], Rows = [], Pattern = ReadingPattern.CellCentres };
        void Lies(ReadingPattern pattern, double[] columns, double[] rows)
        {
            var set = Into(empty with { Pattern = pattern }, "1 2 3\n4 5 6", bench).Value!;
            Assert.Equal(columns, set.Columns);
            Assert.Equal(rows, set.Rows);
        }
        Lies(ReadingPattern.CellCentres, [-0.4, 0, 0.4], [-0.15, 0.15]);
        Lies(ReadingPattern.Crossings, [-0.6, 0, 0.6], [-0.3, 0.3]);
        Lies(ReadingPattern.Quadrant, [0, 0.3, 0.6], [0, 0.3]);
    }

    [Fact]
    public void without_places_take_those_of_the_set_when_their_number_is_right()
    {
        Assert.Equal(Set.Columns, Into(Set, "1 2 3\n4 5 6").Value!.Columns);
        Assert.Contains("2 rows of 2 readings, and nothing says where they lie", Assert.Single(Into(Set, "1 2\n3 4").Problems).Message);
    }
}
