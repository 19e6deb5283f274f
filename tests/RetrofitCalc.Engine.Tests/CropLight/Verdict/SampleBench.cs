using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.CropLight.Verdict;

/// <summary>
/// An invented bench of 1.2 × 0.6 m under one luminaire with two lamps that face down: 40 µmol/s each, ballast factor 0.9, so 72 µmol/s.
/// Lamps new, no dirt, air at their rating. Readings are made by the closed forms with 80 % of that, 0.4 and 0.6 m below.
/// </summary>
internal static class SampleBench
{
    public const string Half = "one of two lamps";

    private static readonly Provenance Tested = new(EvidenceKind.Tested, "Invented for tests");

    public static Lamp Lamp => SampleCatalogue.LampT8 with { Id = "lamp", Source = Tested, PhotonFlux = Photons(40), MeanOverInitial = 0.9 };

    public static Ballast Ballast => SampleCatalogue.Electronic with { Id = "ballast", BallastFactor = 0.9 };

    public static SetUp SetUp => new()
    {
        Id = "set-up", Name = "Two lamps in two steps", Source = Tested, Lamp = "lamp", TestedPower = Power.FromWatts(60),
        Ballasts = [new("ballast", 1), new("ballast", 1)], Steps = [new(Half, [0])],
    };

    /// <summary>A tube of 15 W.</summary>
    public static DirectWireTube Tube(string id, double micromoles, double watts = 15) => SampleCatalogue.TubeT8 with
    {
        Id = id, Name = $"Tube {id}", Source = Tested, PhotonFlux = Photons(micromoles), LinePower = Power.FromWatts(watts), Length = Length.FromFeet(4),
    };

    public static ReadyWiredLuminaire Bar(double micromoles) => new()
    {
        Id = "bar", Name = "Bar", Source = Tested, PhotonFlux = Photons(micromoles), LinePower = Power.FromWatts(30), Length = Length.FromFeet(4),
        RatedLife = OperatingTime.FromHours(50_000), Price = Money.FromUnits(50),
    };

    public static AreaLight Light => new()
    {
        BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6), DirtLoss = 0, AirAtLamps = 25,
        Layout = [new("bench", default)],
        Readings = [Readings("low", 0.4), Readings("high", 0.6)],
    };

    public static LightTarget Target(double leastDaily) => new() { Crop = "Invented crop", Source = Tested, LeastDaily = DailyLight.FromMolesPerSquareMetre(leastDaily) };

    /// <summary>Lit 6 to 22, 16 h a day; an option puts the tube "weak" of 27 µmol/s where lamps were: 54 instead of 72.</summary>
    public static Study Study => new()
    {
        Name = "Bench", Invented = true,
        Site = new() { Name = "Invented site", TimeZone = "Etc/UTC", Jurisdiction = "US" },
        Areas = [Area(new Stage { Name = "Growing", LightsOn = new(6, 0), LightsOff = new(22, 0) })],
        Lines = [new() { Id = "bench", Name = "Bench", Area = "bench", SetUp = "set-up", Count = 10, MountingHeight = Length.FromMetres(0.4), BurnHours = OperatingTime.Zero }],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)),
        Options = [new() { Id = "tubes", Name = "Tubes", Measures = [new("bench", new DirectWire("weak"))] }],
        Products = [new("lamp") { Emission = TubeEmission.DownFacingStrip }],
        Catalogue = new()
        {
            SetUps = [SetUp], Lamps = [Lamp], Ballasts = [Ballast],
            Tubes = [Tube("weak", 27), Tube("same", 36, 18), Tube("strong", 45, 22)], Luminaires = [Bar(72)],
        },
    };

    public static Area Area(params Stage[] stages) => new()
    {
        Id = "bench", Name = "Bench", GrowsCrop = true, Light = Light,
        Seasons = [new() { Name = "Year", Start = new(1, 1), End = new(12, 31), Stages = stages }],
    };

    public static Study WithStage(this Study study, Func<Stage, Stage> change) => study.WithArea(area => area with
    {
        Seasons = [area.Seasons[0] with { Stages = [.. area.Seasons[0].Stages.Select(change)] }],
    });

    /// <summary>Lamps that keep all their light.</summary>
    public static Study WithSteadyLamps(this Study study) => study with { Catalogue = study.Catalogue with { Lamps = [Lamp with { MeanOverInitial = 1 }] } };

    public static Study WithArea(this Study study, Func<Area, Area> change) => study with { Areas = [change(study.Areas[0])] };

    public static Study WithLight(this Study study, Func<AreaLight, AreaLight> change) => study.WithArea(area => area with { Light = change(area.Light!) });

    public static Study With(this Study study, Measure measure, params StageChange[] stages) => study.With(new LineMeasure("bench", measure), stages);

    public static Study With(this Study study, LineMeasure measure, params StageChange[] stages) =>
        study with { Options = [study.Options[0] with { Measures = [measure], Stages = stages }] };

    /// <summary>The verdict on the first stage under the first option.</summary>
    public static StageLight Verdict(this Study study) => StudyEvaluation.Run(study, new()).Options[0].Light.Stages[0];

    /// <summary>What the closed forms give for tubes that face down under the luminaire. [µmol m⁻² s⁻¹]</summary>
    public static double[] Closed(double metres, double micromolesEach, IEnumerable<PlanePoint> points, params double[] across) => [.. points.Select(point => across
        .Select(y => new PlacedTube(TubeEmission.DownFacingStrip, Length.FromFeet(4), Photons(micromolesEach), Length.FromMetres(metres)) { Centre = new(0, y) }.At(point).MicromolesPerSquareMetre)
        .Sum())];

    public static IReadOnlyList<PlanePoint> Quadrant { get; } = [.. from y in Rows from x in Columns select new PlanePoint(x, y)];

    private static double[] Columns => [0, 0.2, 0.4, 0.6];

    private static double[] Rows => [0, 0.15, 0.3];

    /// <summary>A quadrant of readings made with 80 % of 36 µmol/s from each lamp.</summary>
    public static ReadingSet Readings(string id, double metres, string? step = null)
    {
        var light = Closed(metres, 0.8 * 36, Quadrant, step is null ? [-0.05, 0.05] : [-0.05]);
        return new()
        {
            Id = id, Pattern = ReadingPattern.Quadrant, Height = Length.FromMetres(metres), Columns = Columns, Rows = Rows, LitStep = step,
            Values = [.. light.Chunk(Columns.Length).Select(row => row.Select(value => (double?)value).ToArray())],
            Date = new LocalDate(2026, 10, 1), RoomDark = true, SensorLevel = true,
        };
    }

    private static PhotonFlux Photons(double micromoles) => PhotonFlux.FromMicromolesPerSecond(micromoles);
}
