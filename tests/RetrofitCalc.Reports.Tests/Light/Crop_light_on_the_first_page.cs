using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace RetrofitCalc.Reports.Tests.Light;

public class Crop_light_on_the_first_page
{
    private static readonly Area First = LightSamples.Growing[0];
    private static readonly Area Second = LightSamples.Growing[1];

    [Fact]
    public void says_not_known_with_the_question_that_settles_it()
    {
        var part = Part(LightSamples.With(LightSamples.NotKnown(First), LightSamples.NotKnown(Second)))!;
        Assert.Equal("Crop light not known", part.Word);
        Assert.Equal($"Not known in 2 of 2 growing areas. Read the light in {First.Name} on a grid at the height of the crop.", part.Sentences[0]);
    }

    [Fact]
    public void names_what_the_rated_outputs_alone_say_where_nothing_was_read()
    {
        var part = Part(LightSamples.With(LightSamples.NotKnown(First) with { RatedChange = 0.05 }, LightSamples.NotKnown(Second) with { RatedChange = -0.12 }))!;
        Assert.Contains($"({Second.Name} by rated output the lamps would send out 12\u00A0% less).", part.Sentences[0]);
    }

    [Fact]
    public void puts_the_area_that_loses_light_first_with_its_range_its_target_the_fix_and_its_watts()
    {
        var part = Part(LightSamples.With(LightSamples.Keeping(First), LightSamples.Losing(Second)))!;
        Assert.Equal("Crop loses light", part.Word);
        Assert.StartsWith(Second.Name, part.Sentences[0]);
        // 158 µmol/m²·s in 16 h: 158 · 16 · 0.0036 = 9.1 mol.
        Assert.Contains("would lose 13\u00A0% ±\u00A04\u00A0% of its light: 9.1\u00A0mol/m² a day, at least 10.0 wanted.", part.Sentences[0]);
        Assert.EndsWith("What keeps it: 18 W tube instead of 14 W, 240\u00A0W more.", part.Sentences[0]);
        Assert.Equal($"Kept in {First.Name} (−3\u00A0% ±\u00A05\u00A0%).", part.Sentences[1]);
    }

    [Fact]
    public void names_the_worst_of_several_losing_areas_first_and_counts_the_rest()
    {
        var worse = LightSamples.Losing(Second) with { Change = -0.31 };
        var third = LightSamples.Growing[2];
        var part = Part(LightSamples.With(LightSamples.Losing(First), worse, LightSamples.Losing(third) with { Change = -0.02 }))!;
        Assert.StartsWith(Second.Name, part.Sentences[0]);
        Assert.StartsWith(First.Name, part.Sentences[1]);
        Assert.Equal("1 more growing areas have too little light; they stand in annex D.", part.Sentences[2]);
    }

    [Fact]
    public void says_when_light_that_is_enough_at_first_runs_out()
    {
        var part = Part(LightSamples.With(LightSamples.Losing(First) with { Verdict = LightVerdict.KeepsAtFirst, BelowTargetAfterYears = 3.24 }))!;
        Assert.Equal("Crop keeps its light at first only", part.Word);
        // At the end 150 µmol/m²·s in 16 h is 8.64 mol.
        Assert.Contains("enough light when new, too little after 3.2\u00A0yr: 8.6\u00A0mol/m² a day, at least 10.0 wanted.", part.Sentences[0]);
    }

    // From 100 to 154 µmol/m²·s where 27 to 41 are wanted; no verdict changes, every word for it says so.
    [Fact]
    public void says_where_more_light_is_kept_than_the_crop_wants()
    {
        var target = new LightTarget { Crop = "shoots", LeastLight = PhotonFluxDensity.FromMicromolesPerSquareMetre(27), MostLight = PhotonFluxDensity.FromMicromolesPerSquareMetre(41), Source = LightSamples.Source };
        var stage = LightSamples.Keeping(First, 0.54) with { Target = target };
        var result = LightSamples.With(stage);
        var text = QuantityText.For(result.Study);
        Assert.Equal("keeps, +54\u00A0% ±\u00A05\u00A0%, more than wanted", LightWords.Short(stage, text));
        Assert.Equal("more than wanted", LightWords.Brief(result.Chosen!.Light, result.Study, text));
        var part = Part(result)!;
        Assert.Equal((LightVerdict.Keeps, "Crop keeps its light, more than wanted"), (part.Verdict, part.Word));
        Assert.Contains(part.Sentences, sentence => sentence.Contains("more than wanted: 154", StringComparison.Ordinal) && sentence.Contains("27–41", StringComparison.Ordinal));
    }

    [Fact]
    public void says_that_a_target_cannot_be_reached_where_nothing_is_done()
    {
        var stage = LightSamples.Keeping(First, 0) with { Verdict = LightVerdict.Unchanged, Unreachable = true };
        Assert.Contains(Part(LightSamples.With(stage))!.Sentences, sentence => sentence.EndsWith("No number of hours the crop bears gives what it wants.", StringComparison.Ordinal));
    }

    [Fact]
    public void prints_the_saving_both_ways_when_light_differs()
    {
        var equal = new EqualLight(Money.FromUnits(9800), Money.FromUnits(52_000), new Payback(3.1), Power.FromWatts(15_000), true);
        var result = LightSamples.Edited(option => option with { AtEqualLight = equal });
        Assert.Contains(Part(result)!.Sentences, sentence => sentence.StartsWith("At equal light $9,800 saved a year for $52,000 (3.1\u00A0yr); luminaire for luminaire $", StringComparison.Ordinal));
        var rows = BudgetSummary.From(result, Samples.Request).FullComparison.Rows;
        Assert.Contains(rows, row => row.Cells[0] == "Saved a year at equal light" && row.Cells.Contains("$9,800"));
    }

    [Theory]
    [InlineData(true, "$9,800, without Seedling racks")]
    [InlineData(false, "not known")]
    public void names_growing_areas_that_equal_light_leaves_out(bool known, string saved)
    {
        var equal = new EqualLight(Money.FromUnits(9800), Money.FromUnits(52_000), new Payback(3.1), Power.FromWatts(15_000), true) { Without = ["Seedling racks"], Known = known };
        var result = LightSamples.Edited(option => option with { AtEqualLight = equal });
        Assert.Contains(Part(result)!.Sentences, sentence => sentence.StartsWith("At equal light, without Seedling racks, $9,800 saved a year for $52,000", StringComparison.Ordinal));
        Assert.Contains(BudgetSummary.From(result, Samples.Request).FullComparison.Rows, row => row.Cells[0] == "Saved a year at equal light" && row.Cells.Contains(saved));
    }

    [Fact]
    public void asks_for_the_schedule_too_where_a_crop_has_none() =>
        Assert.StartsWith($"Say when the crop of {First.Name} is lit", Part(LightSamples.WithLight(new([], [])))!.Sentences[0]);

    [Fact]
    public void is_left_out_where_no_crop_grows()
    {
        var result = LightSamples.WithLight(new([], []));
        Assert.Null(Part(result with { Study = result.Study with { Areas = [.. result.Study.Areas.Select(area => area with { GrowsCrop = false })] } }));
    }

    [Fact]
    public void warns_where_people_would_have_too_little()
    {
        var hall = Samples.Quillmere.Study.Areas.First(area => !area.GrowsCrop);
        var dim = new TaskLight { Area = hall.Id, Task = "packing", Wanted = Illuminance.FromLux(300), After = Illuminance.FromLux(240), Source = LightSamples.Source, Basis = "lumen method" };
        // 240 lx are 240 / 10.764 = 22 foot-candles.
        Assert.Contains(BudgetSummary.From(LightSamples.WithLight(new([], [dim])), Samples.Request).Risks,
            risk => risk == $"{hall.Name} would have 240\u00A0lx (22\u00A0fc) for people; 300\u00A0lx (28\u00A0fc) is wanted (packing).");
    }

    [Fact]
    public void stands_on_the_first_sheet_of_the_PDF_beside_the_open_stops()
    {
        var result = LightSamples.With(LightSamples.Losing(First), LightSamples.NotKnown(Second));
        var summary = BudgetSummary.From(result, Samples.Request);
        using var pdf = PdfDocument.Open(Samples.Pdf(result));
        var page = Plain(pdf, 1);
        foreach (var said in summary.CropLight!.Sentences.Append(summary.CropLight.Word).Concat(summary.OpenStops))
            Assert.Contains(string.Concat(said.Where(c => !char.IsWhiteSpace(c))), page);
        Assert.Contains("Thestudyfileisattachedtothis", page);
        Assert.Contains("AnnexA:figuresandinputs", Plain(pdf, 2));
    }

    [Fact]
    public void moves_the_drawings_to_the_annex_before_the_board_gets_a_second_sheet()
    {
        var places = LightSamples.Growing.Select(LightSamples.Losing).ToArray();
        var result = Samples.Crowded with { Options = [.. Samples.Crowded.Options.Select(option => option with { Light = new(places, []) })] };
        using var pdf = PdfDocument.Open(Samples.Pdf(result));
        var (board, annex) = (Plain(pdf, 1), Plain(pdf, 2) + Plain(pdf, 3) + Plain(pdf, 4) + Plain(pdf, 5));
        var title = string.Concat(BudgetSummary.From(result, Samples.Request).Drawings.Seasons.Title.Where(c => !char.IsWhiteSpace(c)));
        Assert.Contains("Thestudyfileisattachedtothis", board);
        Assert.DoesNotContain(title, board);
        Assert.Contains(title, annex);
    }

    private static string Plain(PdfDocument pdf, int page) => string.Concat(ContentOrderTextExtractor.GetText(pdf.GetPage(page)).Where(c => !char.IsWhiteSpace(c)));

    private static CropLightPart? Part(StudyResult result) => BudgetSummary.From(result, Samples.Request).CropLight;
}
