using System.Globalization;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Tests.Light;

/// <summary>LibreOffice Calc computes the means and daily light anew.</summary>
public class Light_in_the_workbook
{
    [Fact]
    public void is_recomputed_by_LibreOffice_to_the_engines_figures()
    {
        var result = Samples.Quillmere;
        using var book = new RecalculatedWorkbook(Book(result));
        var known = result.Chosen!.Light.Stages.Where(stage => stage is { Now: not null, After: not null }).ToList();
        Assert.NotEmpty(known);
        foreach (var stage in known)
        {
            var label = $"{result.Study.Areas.First(area => area.Id == stage.Area).Name}: {stage.Season}, {stage.Stage}";
            Assert.Equal(stage.Now!.Daily.MolesPerSquareMetre, book.Number("Light", label, 3), 1e-9);
            Assert.Equal(stage.After!.Daily.MolesPerSquareMetre, book.Number("Light", label, 6), 1e-9);
            Assert.Equal(stage.Change ?? 0, book.Number("Light", label, 8), 1e-9);
        }
        SameReadings(result, book);
    }

    [Fact]
    public void gives_the_mean_over_area_of_the_worked_quadrant()
    {
        // Nodes [[120,110,90],[105,96,80],[70,66,55]]: by the trapezoid weights 1/4, 1/2, 1/4 … 90.06; the plain mean would be 88.0 (E-55).
        var result = Samples.Quillmere;
        var set = new ReadingSet
        {
            Id = "q", Pattern = ReadingPattern.Quadrant, Height = Length.FromMetres(0.3048), Columns = [0, 0.3, 0.6], Rows = [0, 0.15, 0.3],
            Values = [[120, 110, 90], [105, 96, 80], [70, 66, 55]],
        };
        var first = LightSamples.Growing[0];
        var light = new AreaLight { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6), Readings = [set] };
        using var book = new RecalculatedWorkbook(Book(result with { Study = result.Study with { Areas = [.. result.Study.Areas.Select(area => area.Id == first.Id ? first with { Light = light } : area)] } }));
        Assert.Equal(90.0625, book.Number("Light", $"Mean over area: {first.Name}, set q, 1\u00A0ft under the lamps"), 1e-9);
        Assert.Equal(55 / 90.0625, book.Number("Light", $"Lowest over mean: {first.Name}, set q, 1\u00A0ft under the lamps"), 1e-9);
    }

    [Fact]
    public void says_not_known_where_it_is_not()
    {
        using var book = new RecalculatedWorkbook(Book(LightSamples.With(LightSamples.NotKnown(LightSamples.Growing[0]))));
        var row = book.Rows("Light").First(cells => cells.Count > 9 && cells[9] == QuantityText.NotKnown);
        Assert.Equal(QuantityText.NotKnown, row[8]);
    }

    [Fact]
    public void stands_in_the_long_table_unrounded()
    {
        var result = LightSamples.With(LightSamples.Losing(LightSamples.Growing[0])) with { Light = new([LightSamples.Losing(LightSamples.Growing[0])], []) };
        using var text = new StringWriter();
        ResultsCsv.Write(result, text);
        var lines = text.ToString().Split("\r\n");
        var chosen = 3 + result.Options.ToList().FindIndex(option => option.Option.Id == result.Chosen!.Option.Id);
        string Cell(string what) => lines.Single(line => line.Contains($": {what}\"") || line.Contains($": {what},")).Split('"')[^1].Split(',')[chosen];
        Assert.Equal(-0.132, double.Parse(Cell("change"), CultureInfo.InvariantCulture));
        Assert.Equal(158, double.Parse(Cell("mean when new"), CultureInfo.InvariantCulture), 9);
    }

    private static void SameReadings(StudyResult result, RecalculatedWorkbook book)
    {
        var text = QuantityText.For(result.Study);
        var sets = result.Study.Areas.Where(area => area.Light is not null).SelectMany(area => area.Light!.Readings.Select(set => (area, set, Read: MeasuredLight.Of(set, area.Light!)))).Where(each => each.Read is not null).ToList();
        Assert.NotEmpty(sets);
        foreach (var (area, set, read) in sets)
        {
            var name = $"{area.Name}, set {set.Id}, {text.Length(set.Height)} under the lamps";
            Assert.Equal(read!.Statistics.Mean.MicromolesPerSquareMetre, book.Number("Light", $"Mean over area: {name}"), 1e-9);
            Assert.Equal(read.Statistics.CoefficientOfVariation!.Value, book.Number("Light", $"Spread: {name}"), 1e-9);
        }
    }

    private static byte[] Book(StudyResult result)
    {
        using var bytes = new MemoryStream();
        SummaryWorkbook.Write(BudgetSummary.From(result, Samples.Request), result, bytes);
        return bytes.ToArray();
    }
}
