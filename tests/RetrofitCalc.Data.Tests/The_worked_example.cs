using RetrofitCalc.Data.Seed;
using RetrofitCalc.Engine;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Examples;
using RetrofitCalc.Files.Safety;

namespace RetrofitCalc.Data.Tests;

/// <summary>The invented nursery must be consistent with the catalogue, show every feature, and give answers a manager can believe.</summary>
public sealed class The_worked_example
{
    private static readonly Study Example = WorkedExample.Load();
    private static readonly Lazy<StudyResult> Result = new(() => StudyEvaluation.Run(Example, SafetyRuleFile.Load()));

    [Fact]
    public void is_complete_and_labelled_invented()
    {
        Assert.Empty(StudyEvaluation.Check(Example));
        Assert.True(Example.Invented);
        Assert.Equal(EvidenceKind.Invented, Example.Tariff.Source.Kind);
    }

    [Fact]
    public void holds_the_catalogue_rows_it_names_as_they_ship()
    {
        var shipped = Shipped.Catalogue().All.ToList();
        var needed = CatalogueUse.Needed(Example, shipped).All.Select(CatalogueJson.Write);
        Assert.Equal(needed, CatalogueUse.Needed(Example, [.. Example.Catalogue.All]).All.Select(CatalogueJson.Write));
        Assert.Equal(needed.Count(), Example.Catalogue.All.Count());
    }

    [Fact]
    public void shows_what_schedules_can_say()
    {
        var stages = Example.Areas.SelectMany(a => a.Seasons).SelectMany(s => s.Stages).ToList();
        Assert.Contains(stages, s => s.LightsOff < s.LightsOn);
        Assert.Contains(stages, s => s.Dimming < 1);
        Assert.Contains(stages, s => s.ClockRule == ClockRule.CountsHours);
        Assert.Contains(stages, s => s.DaysOfWeek.Count > 0);
        Assert.Equal(2, stages.Select(s => s.LitStep).OfType<string>().Distinct().Count());
        Assert.Contains(Example.Areas.SelectMany(a => a.Seasons), s => s.End < s.Start);
        Assert.Contains(Example.Areas, a => a.Weekly?.Holidays.Count > 0);
    }

    [Fact]
    public void shows_what_a_tariff_can_say()
    {
        Assert.Equal(4, Example.Tariff.Energy.Count);
        Assert.All(Example.Tariff.Demand, d => Assert.Equal((15, 0.6), (d.WindowMinutes, d.Ratchet!.Share)));
    }

    [Fact]
    public void rests_on_measured_tested_and_computed_watts()
    {
        var evidence = Result.Value.Now.Lines.Select(l => l.PerLuminaire.Evidence).ToHashSet();
        Assert.Superset(new HashSet<EvidenceKind> { EvidenceKind.Measured, EvidenceKind.Tested, EvidenceKind.Computed }, evidence);
        Assert.Empty(Result.Value.Options.SelectMany(o => o.Refused));
        Assert.Empty(Result.Value.Options.SelectMany(o => o.FirstCost.UnpricedLines));
    }

    // Count × watts by hand: 192×59 + 24×231.5 + 40×72 + 18×33 + 34×158 + 14×72 + 20×59 = 27,918 W.
    [Fact]
    public void connects_what_its_lines_add_up_to() => Assert.Equal(27_918, Result.Value.Now.Site.Connected.Watts, 0.5);

    [Fact]
    public void shows_ballasts_that_fail_before_their_lamps()
    {
        var clocks = Result.Value.Now.Lines.Single(l => l.Line == "tc-lower").Clocks.ToDictionary(c => c.Part);
        // 50,000 h at 70 °C, halved for every 10 °C: 18,946 h at 84 °C. Lamp 30,000 h at 12 h a start and more.
        Assert.Equal(50_000 * Math.Pow(2, -1.4), clocks[WearPart.Ballast].Life.Hours, 1);
        Assert.Equal(30_000, clocks[WearPart.Lamp].Life.Hours);
    }

    [Fact]
    public void pays_where_it_should_and_not_on_the_mist_bench()
    {
        Assert.Equal("direct-wire", Result.Value.Chosen!.Option.Id);
        Assert.InRange(Result.Value.Chosen.SimplePayback.Years!.Value, 1, 5);
        Assert.True(Result.Value.Chosen.NetPresentValue.Units > 0);
        Assert.Null(Option("mist-bench-only").SimplePayback.Years);
        Assert.Null(Option("renew").PlainPayback.Years);
    }

    [Fact]
    public void sends_out_fewer_photons_over_seedlings_and_greens_and_more_over_the_shelves()
    {
        Assert.True(PhotonsAfter("seedlings") < 0.9 * PhotonsNow("seedlings"));
        Assert.True(PhotonsAfter("greens") < 0.9 * PhotonsNow("greens"));
        Assert.True(PhotonsAfter("tc-lower") > PhotonsNow("tc-lower"));
    }

    [Fact]
    public void leaves_stops_open_and_asks_about_the_exit_route()
    {
        var open = Result.Value.Notices.Where(n => n.Severity == NoticeSeverity.Stop && n.Answers.Count == 0).ToList();
        Assert.Contains(open, n => n.Lines.Contains("exit"));
        Assert.Contains(open, n => n.Lines.Contains("corridor-north"));
        Assert.Contains(Result.Value.Questions, q => q is { Line: "exit", Field: nameof(SurveyLine.Emergency) });
    }

    private static OptionResult Option(string id) => Result.Value.Options.Single(o => o.Option.Id == id);

    private static double PhotonsNow(string line)
    {
        var rows = Example.Catalogue;
        var setUp = rows.SetUps.Single(s => s.Id == Example.Lines.Single(l => l.Id == line).SetUp);
        var lamp = rows.Lamps.Single(l => l.Id == setUp.Lamp).PhotonFlux!.Value.MicromolesPerSecond;
        return setUp.Ballasts.Sum(b => b.LampsDriven * lamp * rows.Ballasts.Single(x => x.Id == b.Ballast).BallastFactor!.Value);
    }

    private static double PhotonsAfter(string line)
    {
        var rows = Example.Catalogue;
        var wired = (DirectWire)Example.Options[0].Measures.Single(m => m.Line == line).Measure;
        var lamps = rows.SetUps.Single(s => s.Id == Example.Lines.Single(l => l.Id == line).SetUp).LampCount;
        return (wired.TubesPerLuminaire ?? lamps) * rows.Tubes.Single(t => t.Id == wired.Tube).PhotonFlux!.Value.MicromolesPerSecond;
    }
}
