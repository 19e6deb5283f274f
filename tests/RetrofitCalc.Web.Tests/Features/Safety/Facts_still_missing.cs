using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Safety;

namespace RetrofitCalc.Web.Tests.Features.Safety;

/// <summary>Only facts on which a rule still hangs are asked for.</summary>
public class Facts_still_missing
{
    private static readonly Study Kept = SafetySamples.Study with { Options = [new RetrofitOption { Id = "dw", Name = "Keep all" }] };
    private static readonly Study Converted = Kept with
    {
        Options = [new RetrofitOption { Id = "dw", Name = "Direct-wire", Measures = [new LineMeasure("l1", new DirectWire("tube"))] }],
    };

    [Fact]
    public void ask_about_holders_only_where_tubes_are_wired_directly()
    {
        Assert.DoesNotContain("holder", Names(Kept));
        Assert.Equal(["l1"], Row(Converted, "holder")!.Lines);
    }

    [Fact]
    public void put_what_a_stop_hangs_on_before_what_a_warning_hangs_on() =>
        Assert.Equal(["holder", "building_year", "washdown"], Names(Converted));

    [Fact]
    public void keep_a_given_fact_in_sight_so_that_it_can_be_changed()
    {
        var row = Row(Converted.SetFact(null, "holder", "separate"), "holder")!;
        Assert.False(row.Missing);
        Assert.Equal("separate", row.Value);
    }

    [Fact]
    public void do_not_take_unknown_for_an_answer() =>
        Assert.True(Row(Converted.SetFact(null, "holder", "unknown"), "holder")!.Missing);

    private static FactRow? Row(Study study, string field) => FactRow.Of(study, SafetySamples.Rules).SingleOrDefault(r => r.Field.Name == field);

    private static IEnumerable<string> Names(Study study) => FactRow.Of(study, SafetySamples.Rules).Select(r => r.Field.Name);
}
