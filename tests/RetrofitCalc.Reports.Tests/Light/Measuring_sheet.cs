using NodaTime;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace RetrofitCalc.Reports.Tests.Light;

public class Measuring_sheet
{
    private static readonly LocalDate Day = new(2026, 11, 25);

    [Fact]
    public void lays_out_the_grid_the_spacing_rule_asks_for_where_nothing_is_laid_out_yet()
    {
        // 1.2 m by 0.6 m: 0.2 · 5^log 0.6 = 0.140 m by the shorter side: 9 by 5 cells; 0.227 m by the longer.
        var sheet = Sheet(Bench(1.2, 0.6), metric: true);
        Assert.Contains("at most 0.23 m apart by the longer side, 0.14 m by the shorter; the finer is kept: 9 by 5 cells.", sheet.Spacing);
        var form = Assert.Single(sheet.Forms);
        Assert.Equal((45, 9, 5), (form.Points.Count, form.Columns.Count, form.Rows.Count));
        Assert.Equal(("", "0.07", "1.13"), (form.Height, form.Columns[0].Mark, form.Columns[^1].Mark)); // 1.2/18 = 0.067 from each end
    }

    [Fact]
    public void asks_for_one_stretch_only_of_a_hall_too_large_to_walk()
    {
        // 30 m by 20 m: 0.2 · 5^log 20 = 1.62 m: 19 by 13 cells, 247 readings.
        var sheet = Sheet(Bench(30, 20), metric: true);
        Assert.Contains("19 by 13 cells. That is 247 readings: read one stretch between neighbouring luminaires", sheet.Spacing);
        Assert.Equal(40, Assert.Single(sheet.Forms).Points.Count);
    }

    [Fact]
    public void asks_for_the_bench_where_nobody_measured_it() => Assert.StartsWith("Measure the bench first", Sheet(new AreaLight(), metric: false).Spacing);

    [Fact]
    public void has_a_form_for_each_height_with_its_own_places_in_inches()
    {
        var light = Bench(1.2192, 0.6096) with { Readings = [Set(ReadingPattern.Crossings, 0.3048), Set(ReadingPattern.Crossings, 0.4572)] };
        var sheet = Sheet(light, metric: false);
        Assert.Equal(["1\u00A0ft", "1\u00A0ft\u00A06\u00A0in"], sheet.Forms.Select(form => form.Height));
        // From −24 in to 24 in of a 48 in bench: 0, 24 and 48 in from the left end.
        Assert.Equal(["0", "24", "48"], sheet.Forms[0].Columns.Select(column => column.Mark));
        Assert.Equal(LightUnit.Micromoles, sheet.Forms[0].Unit);
    }

    [Fact]
    public void walks_along_one_row_and_back_along_the_next()
    {
        var form = Assert.Single(Sheet(Bench(1.2192, 0.6096) with { Readings = [Set(ReadingPattern.Crossings, 0.3)] }, metric: true).Forms);
        Assert.Equal([0, 0.6096, 1.2192, 1.2192, 0.6096, 0], form.Points.Select(point => Math.Round(point.X, 6)));
        Assert.Equal([0, 0, 0, 0.6096, 0.6096, 0.6096], form.Points.Select(point => Math.Round(point.Y, 6)));
    }

    [Fact]
    public void draws_one_quarter_from_the_middle_of_the_bench()
    {
        var set = Set(ReadingPattern.Quadrant, 0.3) with { Columns = [0, 0.3, 0.6], Rows = [0, 0.3] };
        var form = Assert.Single(Sheet(Bench(1.2, 0.6) with { Readings = [set] }, metric: true).Forms);
        Assert.Equal((0.6, 0.3), (form.Length, form.Width));
        Assert.Equal(["0.00", "0.30", "0.60"], form.Columns.Select(column => column.Mark));
    }

    [Fact]
    public void walks_outwards_along_each_line_from_the_middle()
    {
        // Two lines, to the right and towards the reader: places 0.2 m and 0.4 m out, from the middle of 1.2 m by 0.8 m.
        var set = Set(ReadingPattern.Outwards, 0.3) with { Columns = [0.2, 0.4], Rows = [0, 90] };
        var form = Assert.Single(Sheet(Bench(1.2, 0.8) with { Readings = [set] }, metric: true).Forms);
        Assert.Equal([(0.8, 0.4), (1.0, 0.4), (0.6, 0.6), (0.6, 0.8)], form.Points.Select(point => (Math.Round(point.X, 9), Math.Round(point.Y, 9))));
    }

    [Theory, InlineData(1.2, 0.6), InlineData(4.8, 1.2), InlineData(12, 9)]
    public void prints_every_place_and_what_to_note(double length, double width)
    {
        var sheet = Sheet(Bench(length, width), metric: true);
        using var file = new MemoryStream();
        MeasuringSheetPdf.Write(sheet, file);
        using var pdf = PdfDocument.Open(file.ToArray());
        var text = string.Concat(pdf.GetPages().Select(page => ContentOrderTextExtractor.GetText(page)).SelectMany(page => page.Where(c => !char.IsWhiteSpace(c))));
        foreach (var said in new[] { "Date", "Read by", "Meter, and when", "room dark", "sensor level", "Height of the lamps over the sensor", "finer is kept" })
            Assert.Contains(said.Replace(" ", ""), text);
        var words = pdf.GetPages().SelectMany(page => page.GetWords()).Select(word => word.Text).ToHashSet();
        Assert.All(sheet.Forms[0].Points, point => Assert.Contains(point.Number.ToString(System.Globalization.CultureInfo.InvariantCulture), words));
        Assert.DoesNotContain(pdf.GetPages(), page => page.Letters.Any(letter => letter.BoundingBox.Bottom < 20 || letter.BoundingBox.Right > page.Width - 30));
    }

    [Fact]
    public void is_none_for_an_area_the_study_does_not_have() => Assert.Null(MeasuringSheet.Of(WorkedExample.Load(), "no-such", Day));

    private static AreaLight Bench(double length, double width) => new() { BenchLength = Length.FromMetres(length), BenchWidth = Length.FromMetres(width) };

    /// <summary>Three places along 48 in, two across 24 in.</summary>
    private static ReadingSet Set(ReadingPattern pattern, double height) => new()
    {
        Id = "r", Pattern = pattern, Height = Length.FromMetres(height), Columns = [-0.6096, 0, 0.6096], Rows = [-0.3048, 0.3048], Values = [[null, null, null], [null, null, null]],
    };

    private static MeasuringSheet Sheet(AreaLight light, bool metric)
    {
        var study = WorkedExample.Load();
        var area = study.Areas.First(a => a.GrowsCrop);
        return MeasuringSheet.Of(study with
        {
            Site = study.Site with { Jurisdiction = metric ? "eu" : "us", Culture = metric ? "en-GB" : "en-US" },
            Areas = [area with { Light = light }],
        }, area.Id, Day)!;
    }
}
