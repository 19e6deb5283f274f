using RetrofitCalc.Engine.Cases;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Luminaires;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Examples;

namespace RetrofitCalc.Engine.Tests.CropLight;

/// <summary>
/// Ten luminaires of two lamps, 2950 lm at a ballast factor of 0.88, in a black room of 10 × 10 m, 5 m below them: 0.4153 of what is sent down
/// falls on the floor (Howell's catalogue), and bare lamps send half of it up. Dirt takes 10 %. Lamps are due at 30,000 h, and mean light is
/// 0.94 at 9,600 h; tubes are due at 70 %. All invented.
/// </summary>
public class Light_for_people
{
    private const double Opposite = 0.4153;
    private const double LampsWhenDue = 0.8231; // 0.94^((30,000 − 100)/9,500)
    private const double Lamps = 10 * 2 * 2950 * 0.88;
    private const double Tubes = 10 * 2 * 1800;

    private static readonly Lamp Lamp = SmallRoom.Lamp with { InitialFlux = LuminousFlux.FromLumens(2950), MeanOverInitial = 0.94 };
    private static readonly DirectWireTube Tube = SmallRoom.Tube with { Flux = LuminousFlux.FromLumens(1800) };
    private static readonly AreaLight Black = new()
    {
        BenchLength = Length.FromMetres(10), BenchWidth = Length.FromMetres(10), Surroundings = new(Length.FromMetres(5), default), DirtLoss = 0.10,
        People = new("potting") { LampsAbovePlane = Length.FromMetres(5) },
    };

    [Fact]
    public void is_the_light_of_the_lamps_by_the_share_that_reaches_the_floor()
    {
        var found = Of(Black);
        Assert.Equal(Lamps * Opposite / 2 * LampsWhenDue * 0.90 / 100, found.Now!.Value.Lux, 0.05); // 79.9 lx
        Assert.Equal(Tubes * Opposite * 0.70 * 0.90 / 100, found.After!.Value.Lux, 0.05);           // 94.2 lx
        Assert.Equal("Lumen method: 10 by 10 m, lamps 5 m up; lamps worn as when due, luminaires dirty as before cleaning.", found.Basis);
    }

    [Fact]
    public void is_held_against_what_is_recommended_and_says_from_where()
    {
        var found = Of(Black);
        Assert.Equal(("room", "Potting and bench work (EN 12464-1)", 300.0, false), (found.Area, found.Task, found.Wanted.Lux, found.Enough));
        Assert.True(found.Source.FromMemory);
        var own = Of(Black with { People = Black.People! with { Illuminance = Illuminance.FromLux(90) } });
        Assert.Equal((90.0, true, "Stated in this study"), (own.Wanted.Lux, own.Enough, own.Source.Source));
    }

    [Fact]
    public void is_more_in_a_bright_room_and_says_when_brightness_was_taken()
    {
        var found = Of(Black with { Surroundings = null });
        Assert.True(found.After > Of(Black).After);
        Assert.Contains("Reflectances of 0.7, 0.5 and 0.2", found.Basis);
    }

    [Fact]
    public void is_scaled_from_what_was_read()
    {
        var found = Of(Black with { Readings = [Read(LightUnit.Lux, 200)] });
        Assert.Equal(200, found.Now!.Value.Lux, 1e-9);
        // Lamps of unknown age as where mean light is read, half way between cleanings: 0.94 · √0.90.
        Assert.Equal(200 * (Tubes * 0.70 * 0.90) / (Lamps / 2 * 0.94 * Math.Sqrt(0.90)), found.After!.Value.Lux, 1e-6);
        Assert.StartsWith("Read: 200 lx, 4 readings with the lamps 3 m up", found.Basis);
    }

    // Read under one of two lamps: before halves, and so does after, one of two tubes.
    [Fact]
    public void is_scaled_alike_when_read_under_half_the_lamps()
    {
        var half = Read(LightUnit.Lux, 200) with { LitStep = "half" };
        var found = Of(Black with { Readings = [half] }, setUp: SmallRoom.SetUp with { Steps = [new("half", [0])], Ballasts = [new("ballast", 1), new("ballast", 1)] });
        Assert.Equal(200 * (Tubes / 2 * 0.70 * 0.90) / (Lamps / 2 / 2 * 0.94 * Math.Sqrt(0.90)), found.After!.Value.Lux, 1e-6);
    }

    [Fact]
    public void counts_foot_candles_as_lux_and_photons_by_their_factor()
    {
        Assert.Equal(215.3, Of(Black with { Readings = [Read(LightUnit.FootCandles, 20)] }).Now!.Value.Lux, 0.05);
        var photons = Read(LightUnit.Micromoles, 3);
        Assert.Equal(210, Of(Black with { Readings = [photons with { Conversion = new(70, 0.07, Provenance.None) }] }).Now!.Value.Lux, 1e-9);
        Assert.StartsWith("Lumen method", Of(Black with { Readings = [photons] }).Basis);
    }

    [Fact]
    public void takes_the_readings_nearest_to_the_plane_people_work_on()
    {
        var far = Read(LightUnit.Lux, 900) with { Id = "far", Height = Length.FromMetres(1) };
        Assert.Equal(200, Of(Black with { Readings = [far, Read(LightUnit.Lux, 200)] }).Now!.Value.Lux, 1e-9);
    }

    [Fact]
    public void says_what_is_missing()
    {
        Assert.Equal("Missing: length and width of Room.", Of(Black with { BenchLength = null }).Basis);
        Assert.Equal("Missing: height of the lamps over the plane people work on.", Of(Black with { People = new("potting") }).Basis);
        var dark = Of(Black, SmallRoom.Tube);
        Assert.Equal(Of(Black).Now, dark.Now);
        Assert.EndsWith("Missing for after: the lumens of 15 W tube.", dark.Basis);
        Assert.Null(dark.Enough);
    }

    [Fact]
    public void is_not_known_behind_lamps_nobody_knows()
    {
        var found = All(Black, Tube, Lamp with { InitialFlux = null }).Single();
        Assert.Equal((null, null, "Missing: the lumens of Two-lamp T8."), (found.Now, found.After, found.Basis));
        Assert.Equal("Missing: the ballast factor of Two-lamp T8.", All(Black, Tube, Lamp, null).Single().Basis);
    }

    [Fact]
    public void keeps_what_was_read_when_only_the_tubes_are_not_known()
    {
        var found = Of(Black with { Readings = [Read(LightUnit.Lux, 200)] }, SmallRoom.Tube);
        Assert.Equal((200.0, null), (found.Now!.Value.Lux, found.After));
        Assert.EndsWith("Missing for after: the lumens of 15 W tube.", found.Basis);
    }

    [Fact]
    public void counts_the_luminaires_placed_over_one_bench_where_some_are()
    {
        var one = Of(Black with { Layout = [new("line", default)] });
        Assert.Equal(Of(Black).After!.Value.Lux / 10, one.After!.Value.Lux, 1e-9);
    }

    [Fact]
    public void is_not_told_where_nobody_asks()
    {
        Assert.Empty(All(Black with { People = null }, Tube));
        Assert.Empty(All(Black with { People = new("no such task") }, Tube));
    }

    [Fact]
    public void has_recommended_values_with_ids_of_their_own_all_from_memory()
    {
        Assert.Equal(TaskLights.All.Count, TaskLights.All.Select(task => task.Id).Distinct().Count());
        Assert.All(TaskLights.All, task => Assert.True(task.Source.FromMemory));
        Assert.Equal([300, 100, 100, 100, 500], new[] { "packing", "corridor", "stairs", "storage", "office" }.Select(id => TaskLights.Find(id)!.Mean.Lux)); // EN 12464-1, from memory
        Assert.Null(TaskLights.Find(null));
    }

    private static TaskLight Of(AreaLight light, DirectWireTube? tube = null, SetUp? setUp = null) => All(light, tube ?? Tube, setUp: setUp).Single();

    private static IReadOnlyList<TaskLight> All(AreaLight light, DirectWireTube tube, Lamp? lamp = null, double? ballastFactor = 0.88, SetUp? setUp = null)
    {
        var area = SmallRoom.Area with { Light = light };
        var study = SmallRoom.Study with { Areas = [area], Catalogue = SmallRoom.Study.Catalogue with { SetUps = [setUp ?? SmallRoom.SetUp], Lamps = [lamp ?? Lamp], Ballasts = [SmallRoom.Ballast with { BallastFactor = ballastFactor }], Tubes = [tube] } };
        var context = new StudyContext(study);
        var now = context.Lines.Select(line => line.Fitted).ToList();
        return PeopleLightEvaluation.Of(context, now, [.. now.Select(line => line with { Fitting = new TubeFitting(tube, 2) })]);
    }

    private static ReadingSet Read(LightUnit unit, double value) => new()
    {
        Id = "floor", Unit = unit, Height = Length.FromMetres(3), Columns = [-2, 2], Rows = [-2, 2], Values = [[value, value], [value, value]],
    };
}
