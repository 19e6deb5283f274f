using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.CropLight;

/// <summary>A short-day crop lit 7:00 to 18:00 from September to December beside racks lit 16:00 to 22:00. All invented.</summary>
public class Warnings_of_day_length
{
    private static readonly LightTarget Poinsettia = new() { Crop = "Poinsettia", DayLength = DayLengthResponse.ShortDay, MostHours = OperatingTime.FromHours(12), Source = Provenance.None };
    private static readonly Stage Finish = new() { Name = "Finish", LightsOn = new(7, 0), LightsOff = new(18, 0), Target = Poinsettia };

    [Fact]
    public void are_none_without_a_target() => Assert.Empty(Of(Finish with { Target = null }));

    [Fact]
    public void are_none_for_a_short_day_crop_in_short_days() => Assert.Empty(Of(Finish));

    [Fact]
    public void tell_of_days_too_long() =>
        Assert.Equal(["Lit 13.5 h a day; it needs short days, 12 h at most."], Of(Finish with { LightsOff = new(20, 30) }));

    [Fact]
    public void tell_of_more_hours_than_any_crop_bears_and_of_fewer_than_it_wants()
    {
        var tomato = Poinsettia with { DayLength = DayLengthResponse.Neutral, FewestHours = OperatingTime.FromHours(14), MostHours = OperatingTime.FromHours(17) };
        Assert.Equal(["Lit 18 h a day; it bears 17 h."], Of(Finish with { LightsOn = new(4, 0), LightsOff = new(22, 0), Target = tomato }));
        Assert.Equal(["Lit 11 h a day; it wants 14 h or more."], Of(Finish with { Target = tomato }));
    }

    [Fact]
    public void tell_of_a_night_that_is_broken() =>
        Assert.Equal(["Lit between 22:00 and 02:00: where daylight reaches the plants as well, this breaks their night."], Of(Finish with { LightsOn = new(18, 0), LightsOff = new(4, 0) }));

    [Fact]
    public void take_lights_on_day_and_night_for_24_hours() =>
        Assert.Contains("Lit 24 h a day; it needs short days, 12 h at most.", Of(Finish with { LightsOff = new(7, 0) }));

    [Fact]
    public void say_when_nobody_knows_how_short_or_how_long()
    {
        var unknown = Poinsettia with { MostHours = null };
        Assert.Equal(["Lit 13 h a day; it needs short days, and nobody has said how short."], Of(Finish with { LightsOff = new(20, 0), Target = unknown }));
        var spinach = unknown with { DayLength = DayLengthResponse.LongDay };
        Assert.Equal(["Lit 16 h a day; long days change its growth, such as bolting or flowering."], Of(Finish with { LightsOn = new(5, 0), LightsOff = new(21, 0), Target = spinach }));
        Assert.Empty(Of(Finish with { Target = spinach }));
    }

    [Theory, InlineData(DayLengthResponse.ShortDay, true), InlineData(DayLengthResponse.LongDay, true), InlineData(DayLengthResponse.Neutral, false)]
    public void forbid_to_buy_daily_light_with_hours_where_the_crop_answers_to_day_length(DayLengthResponse response, bool told)
    {
        var target = Poinsettia with { LeastDaily = DailyLight.FromMolesPerSquareMetre(10), DayLength = response };
        Assert.Equal(told, Of(Finish with { Target = target }).Contains("Do not make up for lost light with more hours: it answers to the length of the day."));
    }

    // MSU Extension: long-day lighting needs 2–3 µmol; SDSU Extension: stray light from a neighbour spoils poinsettia.
    [Fact]
    public void tell_of_stray_light_in_the_dark() =>
        Assert.Equal(
            ["Light from Racks reaches it: 2.5 µmol m⁻² s⁻¹, lit 16:00 to 22:00, 4 h of that in its dark. Two to three are enough to spoil short days."],
            Of(Finish, Racks(2.5)));

    [Fact]
    public void leave_out_stray_light_too_weak_or_onto_another_area()
    {
        Assert.Empty(Of(Finish, Racks(1.9)));
        Assert.Empty(Of(Finish, Racks(2.5) with { Light = new() { Stray = [new("elsewhere", Micromoles(50))] } }));
    }

    [Fact]
    public void leave_out_stray_light_while_the_crop_is_lit_itself_or_does_not_grow()
    {
        Assert.Empty(Of(Finish, Racks(2.5, new(8, 0), new(18, 0))));
        var spring = Racks(2.5) with { Seasons = [Racks(2.5).Seasons[0] with { Start = new(1, 10), End = new(5, 31) }] };
        Assert.Empty(Of(Finish, spring));
    }

    [Fact]
    public void see_stray_light_of_a_hall_by_its_weekly_hours()
    {
        var hall = SampleStudy.Hall with { Light = new() { Stray = [new("bench", Micromoles(6))] } }; // 6:50 to 17:05, lit before the crop
        Assert.Equal(["Light from Packing hall reaches it: 6 µmol m⁻² s⁻¹, lit 06:50 to 17:05, 0.2 h of that in its dark. Two to three are enough to spoil short days."], Of(Finish, hall));
    }

    private static IReadOnlyList<string> Of(Stage stage, params Area[] others)
    {
        var season = new Season { Name = "Autumn", Start = new(9, 1), End = new(12, 15), Stages = [stage] };
        var bench = new Area { Id = "bench", Name = "Bench", GrowsCrop = true, Seasons = [season] };
        return DayLengthWarnings.Of(SampleStudy.Small with { Areas = [bench, .. others] }, bench, season, stage);
    }

    private static Area Racks(double stray, LocalTime? on = null, LocalTime? off = null) => new()
    {
        Id = "racks", Name = "Racks", GrowsCrop = true, Light = new() { Stray = [new("bench", Micromoles(stray))] },
        Seasons = [new() { Name = "Greens", Start = new(10, 1), End = new(11, 30), Stages = [new() { Name = "All", LightsOn = on ?? new(16, 0), LightsOff = off ?? new(22, 0) }] }],
    };

    private static PhotonFluxDensity Micromoles(double value) => PhotonFluxDensity.FromMicromolesPerSquareMetre(value);
}
