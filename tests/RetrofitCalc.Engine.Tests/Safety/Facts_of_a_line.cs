using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Safety;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.Safety;

public class Facts_of_a_line
{
    private static readonly Study Study = SmallRoom.Study;

    [Fact]
    public void hold_what_the_survey_and_the_catalogue_say()
    {
        var line = SmallRoom.Line with
        {
            SupplyVolts = 277, BallastYear = 2004, StartMethod = StartMethod.Instant, Location = LocationClass.Damp, Emergency = EmergencyRole.ExitRoute,
            MountingHeight = Length.FromMetres(3.5),
        };
        var facts = Of(line, SmallRoom.Tubes);
        Holds(facts, ("fixture_count", "10"), ("lamps_per_fixture", "2"), ("lamps_removed", "20"), ("lamp_type", "T8"), ("lamp_base", "G13"));
        Holds(facts, ("ballast_type", "electronic"), ("ballast_year", "2004"), ("start_method", "instant"), ("supply_volts", "277"));
        Holds(facts, ("environment", "damp"), ("emergency_role", "egress_lighting"), ("asset_in_egress_path", "true"), ("mounting_height_m", "3.5"));
        Holds(facts, ("option", "type_b"), ("planned_install_date", "2027-01-01"));
    }

    [Theory]
    [InlineData("start_method"), InlineData("supply_volts"), InlineData("environment"), InlineData("emergency_role"), InlineData("ballast_year")]
    [InlineData("mounting_height_m"), InlineData("tube_feed"), InlineData("tube_location"), InlineData("jurisdiction"), InlineData("lampholder_contact")]
    public void stay_missing_while_nobody_has_said(string field) => Assert.DoesNotContain(field, Of(SmallRoom.Line, SmallRoom.Tubes).Keys);

    [Fact]
    public void say_what_is_done_on_the_line()
    {
        Assert.Equal("do_nothing", Option(null));
        Assert.Equal("do_nothing", Option(new KeepAsIs()));
        Assert.Equal("ballast_replace", Option(new RenewLikeForLike()));
        Assert.Equal("type_b", Option(new DirectWire("tube")));
        Assert.Equal("new_plug", Option(new ReplaceLuminaire("luminaire")));
        string Option(Measure? measure) => new SafetyFacts(Study).Of(SmallRoom.Line, measure)["option"];
    }

    [Fact]
    public void take_the_product_s_sheet()
    {
        var tube = SmallRoom.Tube with
        {
            Feed = TubeFeed.SingleEnd, Voltage = new(120, 277), Location = LocationClass.Dry, PowerFactor = 0.95, HarmonicDistortionPercent = 15,
        };
        var facts = Of(SmallRoom.Line, SmallRoom.Tubes, Study with { Catalogue = Study.Catalogue with { Tubes = [tube] } });
        Holds(facts, ("tube_feed", "single"), ("tube_volts_min", "120"), ("tube_volts_max", "277"), ("tube_location", "dry"), ("tube_pf", "0.95"), ("tube_thd_pct", "15"));
    }

    [Fact]
    public void say_that_people_work_where_the_study_asks_for_their_light()
    {
        Assert.DoesNotContain("people_work", Of(SmallRoom.Line, SmallRoom.Tubes).Keys);
        var lit = Study with { Areas = [SmallRoom.Area with { Light = new() { People = new("packing") } }] };
        Holds(Of(SmallRoom.Line, SmallRoom.Tubes, lit), ("people_work", "true"));
    }

    [Fact]
    public void measured_over_the_crop_say_nothing_about_the_floor()
    {
        var growing = Study with { Areas = [SmallRoom.Area with { GrowsCrop = true }] };
        var facts = Of(SmallRoom.Line with { MountingHeight = Length.FromMetres(0.4) }, SmallRoom.Tubes, growing);
        Assert.DoesNotContain("mounting_height_m", facts.Keys);
        Holds(facts, ("crop_present", "true"), ("plant_purpose", "true"));
    }

    [Fact]
    public void given_for_the_line_win_over_the_survey_and_over_the_site()
    {
        var study = Study with
        {
            Safety = new() { Facts = [new("line", "supply_volts", "120"), new(null, "supply_volts", "347"), new(null, "washdown", "true")] },
        };
        Holds(Of(SmallRoom.Line with { SupplyVolts = 277 }, null, study), ("supply_volts", "120"), ("washdown", "true"));
        Holds(Of(SmallRoom.Line with { Id = "other", SupplyVolts = 277 }, null, study), ("supply_volts", "277"));
        Holds(Of(SmallRoom.Line with { Id = "other" }, null, study), ("supply_volts", "347"));
    }

    [Fact]
    public void name_a_lamp_the_rules_do_not_know_as_other()
    {
        var study = Study with { Catalogue = Study.Catalogue with { Lamps = [SmallRoom.Lamp with { Family = "T6", Base = "X1" }] } };
        Holds(Of(SmallRoom.Line, null, study), ("lamp_type", "other"), ("lamp_base", "other"));
    }

    private static IReadOnlyDictionary<string, string> Of(SurveyLine line, RetrofitOption? option, Study? study = null) =>
        SafetyFacts.Of(study ?? Study, line, option);

    private static void Holds(IReadOnlyDictionary<string, string> facts, params (string Field, string Value)[] expected) =>
        Assert.All(expected, pair => Assert.Equal(pair.Value, facts.GetValueOrDefault(pair.Field)));
}
