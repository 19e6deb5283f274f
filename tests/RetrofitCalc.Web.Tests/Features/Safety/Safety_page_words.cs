using RetrofitCalc.Engine.Results;
using RetrofitCalc.Web.Features.Safety;

namespace RetrofitCalc.Web.Tests.Features.Safety;

/// <summary>Titles, names and sources as the safety page says them.</summary>
public class Safety_page_words
{
    private static readonly SafetyNotice Stop = SafetySamples.Stop;
    private static readonly SafetyNotice Answered = Stop with { Answers = [SafetySamples.Answer()] };

    [Fact]
    public void one_open_stop_is_named_in_the_title() =>
        Assert.Equal("One stop is open: lampholders", SafetyFinding.Sentence([Stop, SafetySamples.Warning]));

    [Fact]
    public void several_open_stops_are_counted() => Assert.Equal("Two stops are open", SafetyFinding.Sentence([Stop, Stop with { Rule = "S2" }]));

    [Fact]
    public void answered_stops_leave_the_warnings() =>
        Assert.Equal("No stop is open; one warning waits for its answer", SafetyFinding.Sentence([Answered, SafetySamples.Warning]));

    [Fact]
    public void a_stop_answered_for_one_of_its_lines_stays_open() =>
        Assert.Equal("One stop is open: lampholders", SafetyFinding.Sentence([Stop with { Answers = [SafetySamples.Answer("l1")] }]));

    [Fact]
    public void the_lead_names_the_lines_that_must_wait() =>
        Assert.Equal("Nothing on Hall north may be ordered or changed until the question below is answered.",
            SafetyFinding.Lead(SafetySamples.Study, [Stop with { Lines = ["l2"] }]));

    [Fact]
    public void a_stop_for_the_site_holds_up_everything() =>
        Assert.StartsWith("Nothing may be ordered", SafetyFinding.Lead(SafetySamples.Study, [Stop with { Lines = [] }]));

    [Theory]
    [InlineData("SEEN1", "A notice, 2010")]
    [InlineData("MEM1", "A code, article 1 (from memory, not read again)")]
    [InlineData("CP1", "Trade habit (common practice, no document)")]
    [InlineData("lost", "lost (unsourced)")]
    public void sources_say_how_they_were_read(string key, string shown) => Assert.Equal(shown, SafetyWords.Source(SafetySamples.Rules, key));

    [Theory]
    [InlineData("true", "yes"), InlineData("not_checked", "not checked"), InlineData("us", "United States")]
    public void words_of_the_rule_file_become_plain(string word, string shown) => Assert.Equal(shown, SafetyWords.Value(word));
}
