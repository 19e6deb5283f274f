using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Cases;

public class Remarks_on_what_is_missing
{
    [Fact]
    public void are_none_where_the_catalogue_and_the_schedule_say_all() =>
        Assert.DoesNotContain(Of(SmallRoom.Study), remark =>
            remark.Contains("No life") || remark.Contains("No price") || remark.Contains("No stage") || remark.Contains("does not have"));

    [Fact]
    public void name_the_set_up_without_the_step_the_schedule_asks_for() =>
        Assert.Contains($"The schedule of Growing room asks for the step \"{SampleCatalogue.OneLamp}\", which 2 × T8 does not have: counted with all lamps lit.",
            Of(SampleStudy.Small));

    [Fact]
    public void count_the_days_of_a_season_after_its_last_stage()
    {
        // 10 May to 20 August are 103 days; a stage of 90 leaves 13.
        var summer = SampleStudy.Room.Seasons[1];
        var room = SampleStudy.Room with { Seasons = [summer with { Stages = [summer.Stages[0] with { Days = 90 }] }] };
        Assert.Contains("No stage is planned on 13 days of Summer crop in Growing room: they count as dark.",
            Of(SampleStudy.Small with { Areas = [room, SampleStudy.Hall] }));
    }

    [Fact]
    public void name_a_tube_of_unknown_life_whose_replacements_are_missing() =>
        Assert.Contains("No life is known for 15 W tube: their replacements are not counted, which makes them look cheaper than they are.",
            Of(WithCatalogue(SmallRoom.Study.Catalogue with { Tubes = [SmallRoom.Tube with { RatedLife = null }] })));

    [Fact]
    public void name_parts_replaced_without_their_price() =>
        Assert.Contains("No price is known for 32 W T8, 15 W tube: their replacements count labour and recycling alone.",
            Of(WithCatalogue(SmallRoom.Study.Catalogue with
            {
                Lamps = [SmallRoom.Lamp with { Price = null }],
                Tubes = [SmallRoom.Tube with { Price = null }],
            })));

    private static Study WithCatalogue(Engine.Catalogue.CatalogueExtract catalogue) => SmallRoom.Study with { Catalogue = catalogue };

    private static IReadOnlyList<string> Of(Study study) => StudyRemarks.Of(new StudyContext(study));
}
