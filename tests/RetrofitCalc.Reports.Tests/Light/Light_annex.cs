using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Spectra;
using UglyToad.PdfPig;
using UglyToad.PdfPig.DocumentLayoutAnalysis.TextExtractor;

namespace RetrofitCalc.Reports.Tests.Light;

public class Light_annex
{
    private const string S = "\u00A0";
    private static readonly Area First = LightSamples.Growing[0];
    private static readonly BudgetSummary Quillmere = BudgetSummary.From(Samples.Quillmere, Samples.Request);

    [Fact]
    public void has_a_row_for_every_stage_of_every_growing_area()
    {
        var stages = LightSamples.Growing.Sum(area => area.Seasons.Sum(season => season.Stages.Count));
        Assert.Equal(stages, Assert.Single(Quillmere.Light!.Overview.Tables).Rows.Count);
        Assert.Equal(LightSamples.Growing.Count, Quillmere.Light.Areas.Count);
    }

    [Fact]
    public void gives_the_figures_of_now_after_and_at_the_end()
    {
        var area = Assert.Single(Annex(LightSamples.With(LightSamples.Losing(First))).Areas);
        var rows = area.Statistics!.Rows.ToDictionary(row => row.Cells[0], row => row.Cells.Skip(1).ToArray());
        Assert.Equal(["182", "158", "150"], rows["Mean, µmol/m²·s"]);
        // Lowest is 0.56 of the mean: 101.9, 88.5, 84; highest 1.33 of it: 242.1, 210.1, 199.5.
        Assert.Equal(["102 and 242", "88 and 210", "84 and 200"], rows["Lowest and highest, µmol/m²·s"]);
        Assert.Equal(["0.56", "0.56", "0.56"], rows["Lowest over mean"]);
        // 182, 158 and 150 in 16 h: times 16 · 0.0036 = 0.0576.
        Assert.Equal(["10.5", "9.1", "8.6"], rows[$"Daily light in 16{S}h, mol/m² a day"]);
    }

    [Fact]
    public void states_the_weighting_of_each_set_and_prints_the_mean_over_area()
    {
        // The worked quadrant of canopy readings: plain mean 88.0, over area 90.06 (E-55).
        var set = new ReadingSet
        {
            Id = "q", Pattern = ReadingPattern.Quadrant, Height = Length.FromMetres(0.3), Columns = [0, 0.3, 0.6], Rows = [0, 0.15, 0.3],
            Values = [[120, 110, 90], [105, 96, 80], [70, 66, 55]],
        };
        var light = new AreaLight { BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6), Readings = [set] };
        var result = LightSamples.With(LightSamples.Losing(First));
        var edited = result with { Study = result.Study with { Areas = [.. result.Study.Areas.Select(area => area.Id == First.Id ? area with { Light = light } : area)] } };
        var row = Annex(edited).Areas[0].Tables.First(table => table.Caption == "Readings").Rows[0];
        Assert.Equal("90", row.Cells[2]);
        Assert.Contains("quarter", row.Cells[6]);
        Assert.Contains("dark not noted", row.Cells[7]);
    }

    [Fact]
    public void marks_a_weak_source_of_a_target()
    {
        var losing = LightSamples.Losing(First);
        var weak = Annex(LightSamples.With(losing with { Target = losing.Target! with { WeakSource = true } }));
        Assert.StartsWith("Weak source: ", Target(weak));
        Assert.StartsWith("Invented for this test", Target(Annex(LightSamples.With(losing))));
    }

    [Fact]
    public void draws_now_and_after_on_one_scale_with_round_steps()
    {
        var maps = Quillmere.Light!.Areas.Select(area => area.Maps).First(maps => maps?.After is not null)!;
        var all = maps.Now.Map.Light.Cast<double>().Concat(maps.After!.Map.Light.Cast<double>()).ToList();
        Assert.True(maps.Scale.Steps.Low <= all.Max() && maps.Scale.Steps.Low + maps.Scale.Steps.Count * maps.Scale.Steps.Step >= all.Min());
        Assert.Equal(maps.Scale.Steps.Count + 1, maps.ScaleMarks.Count);
        Assert.InRange(maps.Scale.Steps.Count, 2, 7);
    }

    [Fact]
    public void says_how_the_model_meets_the_readings_and_how_far_it_holds() =>
        Assert.Contains(Quillmere.Light!.Areas, area => area.Sentences.Any(said => said.StartsWith("The model meets", StringComparison.Ordinal)) && area.Sentences.Any(said => said.Contains("is not used beyond")));

    [Fact]
    public void shows_one_map_where_nothing_is_done() =>
        Assert.All(Quillmere.Light!.Areas.Where(area => area.Title.EndsWith("unchanged", StringComparison.Ordinal)), area => Assert.Null(area.Maps?.After));

    [Fact]
    public void gives_the_spectrum_figures_of_the_lamps_and_far_red_as_context_only()
    {
        // FL11 by CIE 15: 4000 K, Ra 83; photons blue 0.236, green 0.407, red 0.358 (S-56).
        var study = WorkedExample.Load();
        var lamp = study.Catalogue.SetUps.First(setUp => setUp.Id == study.Lines[0].SetUp).Lamp;
        var spectra = ProductSpectra.Of(study with { Products = [new ProductLight(lamp) { Spectrum = "FL11" }] }, null);
        var section = BudgetSummary.From(Samples.Quillmere, Samples.Request with { Spectra = spectra }).Light!.More.Single(part => part.Title == "Spectra of the lamps");
        var row = section.Tables[0].Rows[0].Cells;
        Assert.Equal([$"24{S}%", $"41{S}%", $"36{S}%"], row.Skip(1).Take(3));
        Assert.Equal(("4,000", "83"), (row[6], row[7]));
        Assert.Contains("it is in no light, saving or verdict", section.Sentences[0]);
        Assert.Equal(QuantityText.NotKnown, section.Tables[0].Rows[^1].Cells[1]);
    }

    [Fact]
    public void is_printed_as_lines_and_fills_with_its_scale()
    {
        using var pdf = PdfDocument.Open(Samples.Pdf(Samples.Quillmere));
        var pages = pdf.GetPages().Where(page => Text(page).Contains("AnnexD:lightoncrops")).ToList();
        Assert.NotEmpty(pages);
        Assert.All(pages, page => Assert.Empty(page.GetImages()));
        var text = string.Concat(pages.Select(Text));
        foreach (var maps in Quillmere.Light!.Areas.Select(area => area.Maps).OfType<BenchMapsDrawing>())
            Assert.All(maps.ScaleMarks, mark => Assert.Contains(mark, text));
        Assert.Contains("bright,µmol/m²·s", text);
        Assert.DoesNotContain(pages, page => page.Letters.Any(letter => letter.BoundingBox.Bottom < 20 || letter.BoundingBox.Right > page.Width - 30));
    }

    [Fact]
    public void is_left_out_of_a_study_without_crops_and_people()
    {
        var study = WorkedExample.Load();
        var bare = study with { Areas = [.. study.Areas.Select(area => area with { GrowsCrop = false, Weekly = area.Weekly ?? new(), Light = null })] };
        Assert.Null(BudgetSummary.From(StudyEvaluation.Run(bare, Samples.Request.Rules), Samples.Request).Light);
    }

    private static string Target(LightAnnex annex) => annex.More.Single(part => part.Title == "Targets and their sources").Tables[0].Rows[0].Cells[3];

    private static LightAnnex Annex(StudyResult result) => BudgetSummary.From(result, Samples.Request).Light!;

    private static string Text(UglyToad.PdfPig.Content.Page page) => string.Concat(ContentOrderTextExtractor.GetText(page).Where(c => !char.IsWhiteSpace(c)));
}
