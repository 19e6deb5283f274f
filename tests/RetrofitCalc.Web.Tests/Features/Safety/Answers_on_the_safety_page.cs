using System.Globalization;
using NodaTime;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Safety;

namespace RetrofitCalc.Web.Tests.Features.Safety;

/// <summary>What people type becomes answers, facts and ticks of the study.</summary>
public class Answers_on_the_safety_page
{
    private static readonly CultureInfo American = CultureInfo.GetCultureInfo("en-US");

    [Fact]
    public void need_words_a_role_a_name_and_a_day()
    {
        var read = new AnswerForm().Read("S1", American);
        Assert.Null(read.Value);
        Assert.Equal(["Text", "Role", "Person", "Date"], read.Problems.Select(p => p.Path));
    }

    [Fact]
    public void are_read_with_the_dates_of_the_site()
    {
        var form = new AnswerForm { Text = " Separate ", Role = "E", Person = "A. Sample ", Date = "11/18/2026", Line = "l1" };
        Assert.Equal(SafetySamples.Answer("l1"), form.Read("S1", American).Value);
    }

    [Fact]
    public void hold_for_all_lines_unless_one_is_named() =>
        Assert.Null(new AnswerForm { Text = "x", Role = "E", Person = "y", Date = "2026-11-18" }.Read("S1", American).Value!.Line);

    [Fact]
    public void replace_an_earlier_answer_about_the_same_line_only()
    {
        var study = SafetySamples.Study.Answer(SafetySamples.Answer()).Answer(SafetySamples.Answer("l1"))
            .Answer(SafetySamples.Answer() with { Text = "Joined after all" });
        Assert.Equal([("l1", "Separate"), (null, "Joined after all")], study.Safety.Answers.Select(a => (a.Line, a.Text)));
    }

    [Fact]
    public void can_be_taken_back() =>
        Assert.Empty(SafetySamples.Study.Answer(SafetySamples.Answer()).TakeBack(SafetySamples.Answer()).Safety.Answers);

    [Fact]
    public void set_a_fact_for_the_site_beside_one_for_a_line_and_clear_it_again()
    {
        var study = SafetySamples.Study.SetFact(null, "holder", "joined").SetFact("l1", "holder", "separate").SetFact(null, "holder", "separate");
        Assert.Equal([new SafetyFact("l1", "holder", "separate"), new SafetyFact(null, "holder", "separate")], study.Safety.Facts);
        Assert.Equal([new SafetyFact("l1", "holder", "separate")], study.SetFact(null, "holder", null).Safety.Facts);
    }

    [Fact]
    public void tick_an_item_once_and_untick_it()
    {
        var tick = new ChecklistAnswer("A1", "E", "A. Sample", new LocalDate(2026, 11, 18));
        var study = SafetySamples.Study.Tick(tick).Tick(tick with { Evidence = "folder 3" });
        Assert.Equal("folder 3", Assert.Single(study.Safety.Checklist).Evidence);
        Assert.Empty(study.Untick("A1").Safety.Checklist);
    }
}
