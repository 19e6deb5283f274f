using CsCheck;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Spectra;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Engine.Tests.Samples;

namespace RetrofitCalc.Engine.Tests.Checks;

/// <summary>One thing wrong at a time: the problem names the path and says value and range.</summary>
public class Problems_of_light
{
    private static readonly Provenance Source = new(EvidenceKind.Invented, "example");

    private static readonly ReadingSet Readings = new()
    {
        Id = "low", Pattern = ReadingPattern.Crossings, Height = Metres(0.3), Columns = [-0.6, 0, 0.6], Rows = [-0.3, 0.3],
        Values = [[120, null, 118], [117, 121, 119]], Confirmed = [5],
    };

    private static readonly AreaLight Light = new()
    {
        BenchLength = Metres(1.2), BenchWidth = Metres(0.6), Surroundings = new(Metres(0.45), new(0.3, 0.5, 0.7)), Readings = [Readings],
        Layout = [new("racks", new(0, -0.15)), new("racks", new(0, 0.15)) { HigherBy = 0.02 }],
        Stray = [new("hall", PhotonFluxDensity.FromMicromolesPerSquareMetre(0.3))], People = new("packing"),
    };

    private static readonly LightTarget Target = new()
    {
        Crop = "Lettuce", LeastDaily = DailyLight.FromMolesPerSquareMetre(12), MostDaily = DailyLight.FromMolesPerSquareMetre(17),
        FewestHours = OperatingTime.FromHours(12), MostHours = OperatingTime.FromHours(18), Source = Source,
    };

    private static readonly StudyDistribution File = new("file", "Strip", Source) { Vertical = [0, 45, 90], Horizontal = [0], Candelas = [[100, 70, 0]] };
    private static readonly StudySpectrum Spectrum = new("own", "Own white", Source) { Nanometres = [400, 550, 700], Values = [1, 2, 1] };
    private static readonly ProductLight Product = new("tube") { Distribution = "file", Spectrum = "own", Conversion = new(70, 0.1, Source) };

    public static TheoryData<string, string, Func<Study, Study>> Wrong => new()
    {
        { "Areas[0].Light.BenchLength", "is 0; it must be 0.05 to 500", s => WithLight(s, l => l with { BenchLength = Length.Zero }) },
        { "Areas[0].Light.BenchWidth", "is 600; it must be", s => WithLight(s, l => l with { BenchWidth = Metres(600) }) },
        { "Areas[0].Light.AirAtLamps", "is 95; it must be -30 to 80", s => WithLight(s, l => l with { AirAtLamps = 95 }) },
        { "Areas[0].Light.DirtLoss", "is 5; it must be 0 to 0.9", s => WithLight(s, l => l with { DirtLoss = 5 }) },
        { "Areas[0].Light.CleaningMonths", "is 0; it must be 1 to 120", s => WithLight(s, l => l with { CleaningMonths = 0 }) },
        { "Areas[0].Light.Surroundings.Reflectance.Sides", "is 1; it must be 0 to 0.99", s => WithLight(s, l => l with { Surroundings = new(Metres(0.45), new(0.3, 1, 0.7)) }) },
        { "Areas[0].Light.Readings[0].Height", "0.3 m over the sensor, but what is above them is only 0.25 m", s => WithLight(s, l => l with { Surroundings = new(Metres(0.25), new(0.3, 0.5, 0.7)) }) },
        { "Areas[0].Light.Layout[1].Line", "\"attic\", which the survey does not have", s => WithPlace(s, p => p with { Line = "attic" }) },
        { "Areas[0].Light.Layout[1].Line", "\"hall\", which is in another area", s => WithPlace(s, p => p with { Line = "hall" }) },
        { "Areas[0].Light.Layout[1].Centre.X", "is 300 m from the middle", s => WithPlace(s, p => p with { Centre = new(300, 0) }) },
        { "Areas[0].Light.Layout[1].Centre.Y", "here 2.3 m from its middle", s => WithPlace(s, p => p with { Centre = new(0, -2.4) }) },
        { "Areas[0].Light.Layout[1].HigherBy", "is -0.1; it must be 0 to 30", s => WithPlace(s, p => p with { HigherBy = -0.1 }) },
        { "Areas[0].Light.Layout[0].HigherBy", "the lowest itself is 0 m higher", s => WithLight(s, l => l with { Layout = [l.Layout[1]] }) },
        { "Areas[0].Light.Layout[1].TiltDegrees", "is 91; it must be -90 to 90", s => WithPlace(s, p => p with { TiltDegrees = 91 }) },
        { "Areas[0].Light.Layout[1].LampSpacing", "is 6; it must be 0 to 5", s => WithPlace(s, p => p with { LampSpacing = Metres(6) }) },
        { "Areas[0].Light.Stray[0].Onto", "stray onto Growing room itself", s => WithLight(s, l => l with { Stray = [new("room", default)] }) },
        { "Areas[0].Light.Stray[0].Onto", "\"cellar\", which the study does not have", s => WithLight(s, l => l with { Stray = [new("cellar", default)] }) },
        { "Areas[0].Light.Stray[1].Onto", "is given twice", s => WithLight(s, l => l with { Stray = [.. l.Stray, .. l.Stray] }) },
        { "Areas[0].Light.People.Illuminance", "is 0; it must be 1 to 100000", s => WithLight(s, l => l with { People = new(null, Illuminance.Zero) }) },
        { "Areas[0].Light.People.Task", "\"juggling\" is not among the tasks", s => WithLight(s, l => l with { People = new("juggling") }) },
        { "Areas[0].Light.People.Task", "Say what people do in Growing room", s => WithLight(s, l => l with { People = new(null) }) },
        { "Areas[0].Light.Readings[1].Id", "used twice", s => WithLight(s, l => l with { Readings = [Readings, Readings] }) },
        { "Areas[0].Light.Readings[0].Columns[2]", "must rise: -0.1 follows 0", s => WithSet(s, r => r with { Columns = [-0.6, 0, -0.1] }) },
        { "Areas[0].Light.Readings[0].Columns[2]", "is 60 m from the middle", s => WithSet(s, r => r with { Columns = [-0.6, 0, 60] }) },
        { "Areas[0].Light.Readings[0].Rows[0]", "counted from the middle, zero or more", s => WithSet(s, r => r with { Pattern = ReadingPattern.Quadrant, Columns = [0, 0.3, 0.6] }) },
        { "Areas[0].Light.Readings[0].Rows[1]", "is 400; it must be -360 to 360", s => WithSet(s, r => r with { Pattern = ReadingPattern.Outwards, Columns = [0, 0.3, 0.6], Rows = [0, 400] }) },
        { "Areas[0].Light.Readings[0].Values", "There are 1 lists of readings for 2 rows", s => WithSet(s, r => r with { Values = [r.Values[0]] }) },
        { "Areas[0].Light.Readings[0].Values[1]", "Row 2 has 2 readings for 3 places", s => WithSet(s, r => r with { Values = [r.Values[0], [1, 2]] }) },
        { "Areas[0].Light.Readings[0].Values[1][2]", "row 2, column 3 (µmol m⁻² s⁻¹) is -1; it must be 0 to 10000", s => WithSet(s, r => r with { Values = [r.Values[0], [1, 2, -1]] }) },
        { "Areas[0].Light.Readings[0].Values[0][0]", "is 10001; it must be", s => WithSet(s, r => r with { Values = [[10_001, null, null], r.Values[1]] }) },
        { "Areas[0].Light.Readings[0].Values[0][0]", "is NaN; it must be", s => WithSet(s, r => r with { Values = [[double.NaN, null, null], r.Values[1]] }) },
        // 10,000 µmol at 70 lx per µmol are 700,000 lx, and 65,032 fc of 10.7639 lx.
        { "Areas[0].Light.Readings[0].Values[0][0]", "(lx) is 700001; it must be 0 to 700000", s => WithSet(s, r => r with { Unit = LightUnit.Lux, Conversion = new(70, 0.1, Source), Values = [[700_001, null, null], r.Values[1]] }) },
        { "Areas[0].Light.Readings[0].Values[0][0]", "(fc) is 65033; it must be 0 to 65032", s => WithSet(s, r => r with { Unit = LightUnit.FootCandles, Conversion = new(70, 0.1, Source), Values = [[65_033, null, null], r.Values[1]] }) },
        { "Areas[0].Light.Readings[0].Conversion.LuxPerMicromole", "are 700; they must be more than zero and at most 147.2", s => WithSet(s, r => r with { Conversion = new(700, 0.1, Source) }) },
        { "Areas[0].Light.Readings[0].Conversion.Uncertainty", "is 5; it must be 0 to 0.5", s => WithSet(s, r => r with { Conversion = new(70, 5, Source) }) },
        { "Areas[0].Light.Readings[0].MeterUncertainty", "is 5; it must be 0 to 0.5", s => WithSet(s, r => r with { MeterUncertainty = 5 }) },
        { "Areas[0].Light.Readings[0].Confirmed[0]", "Reading number 6 is confirmed, but the set has 6", s => WithSet(s, r => r with { Confirmed = [6] }) },
        { "Areas[0].Seasons[0].Stages[0].Target.MostDaily", "At most 10 mol m⁻² d⁻¹, but at least 12", s => WithTarget(s, t => t with { MostDaily = DailyLight.FromMolesPerSquareMetre(10) }) },
        { "Areas[0].Seasons[0].Stages[0].Target.LeastDaily", "is 300; it must be 0 to 200", s => WithTarget(s, t => t with { LeastDaily = DailyLight.FromMolesPerSquareMetre(300), MostDaily = null }) },
        { "Areas[0].Seasons[0].Stages[0].Target.MostHours", "is 25; it must be 0 to 24", s => WithTarget(s, t => t with { MostHours = OperatingTime.FromHours(25) }) },
        { "Areas[0].Seasons[0].Stages[0].Target.MostHours", "At most 11 h, but at least 12 h", s => WithTarget(s, t => t with { MostHours = OperatingTime.FromHours(11) }) },
        { "Products[1].Product", "is said twice", s => s with { Products = [Product, Product] } },
        { "Products[0].Distribution", "\"other\", which the study does not have", s => s with { Products = [Product with { Distribution = "other" }] } },
        { "Products[0].Conversion.LuxPerMicromole", "are 0; they must be more than zero", s => s with { Products = [Product with { Conversion = new(0, 0.1, Source) }] } },
        { "Distributions[1].Id", "used twice", s => s with { Distributions = [File, File] } },
        { "Distributions[0].Vertical[2]", "must rise: 45 follows 45", s => s with { Distributions = [File with { Vertical = [0, 45, 45] }] } },
        { "Distributions[0].Vertical[2]", "is 181; it must be 0 to 180", s => s with { Distributions = [File with { Vertical = [0, 45, 181] }] } },
        { "Distributions[0].Horizontal", "are 1; there must be 2 or more", s => s with { Distributions = [File with { Type = PhotometricType.B }] } },
        { "Distributions[0].Candelas", "1 rows of intensities for 2 horizontal angles", s => s with { Distributions = [File with { Horizontal = [0, 90] }] } },
        { "Distributions[0].Candelas[0]", "2 intensities for 3 vertical angles", s => s with { Distributions = [File with { Candelas = [[1, 2]] }] } },
        { "Distributions[0].Candelas[0][1]", "is -2; it must be zero or more", s => s with { Distributions = [File with { Candelas = [[1, -2, 3]] }] } },
        { "Spectra[1].Id", "used twice", s => s with { Spectra = [Spectrum, Spectrum] } },
        { "Spectra[0].Nanometres[1]", "must rise: 400 follows 400", s => s with { Spectra = [Spectrum with { Nanometres = [400, 400, 700] }] } },
        { "Spectra[0].Values", "2 values for 3 wavelengths", s => s with { Spectra = [Spectrum with { Values = [1, 2] }] } },
        { "Spectra[0].Values", "nothing but zeros", s => s with { Spectra = [Spectrum with { Values = [0, 0, 0] }] } },
        { "Assumptions.LightRelampShare", "is 0.4; it must be 0.5 to 0.98", s => s with { Assumptions = new() { LightRelampShare = 0.4 } } },
        { "Options[0].Measures[0].Height", "is 0; it must be 0.02 to 30", s => s with { Options = [s.Options[0] with { Measures = [s.Options[0].Measures[0] with { Height = Length.Zero }] }] } },
    };

    private static Study Sound => WithTarget(WithLight(
        SampleStudy.Small with { Products = [Product], Distributions = [File], Spectra = [Spectrum] }, _ => Light), _ => Target);

    [Fact]
    public void are_none_in_a_sound_study() => Assert.Empty(StudyEvaluation.Check(Sound));

    [Fact]
    public void are_none_where_nothing_was_read_yet() =>
        Assert.Empty(StudyEvaluation.Check(WithSet(Sound, _ => new ReadingSet { Id = "new", Height = Metres(0.3) })));

    [Theory, MemberData(nameof(Wrong))]
    public void are_named_with_path_value_and_range(string path, string words, Func<Study, Study> spoil)
    {
        var problem = Assert.Single(StudyEvaluation.Check(spoil(Sound)), problem => problem.Path == path);
        Assert.Contains(words, problem.Message, StringComparison.Ordinal);
    }

    /// <summary>What passes the check must be usable: the constructor is the judge.</summary>
    [Fact]
    public void are_found_wherever_a_distribution_would_be_refused()
    {
        var angle = Gen.OneOf(Gen.Int[-100, 400].Select(n => (double)n), Gen.Const(double.NaN));
        var refused = 0;
        Gen.Select(Gen.Int[0, 2], angle.Array[0, 3], angle.Array[0, 3], Gen.Double[-1, 10].Array[0, 3].Array[0, 3]).Sample(t =>
        {
            var (kind, vertical, horizontal, candelas) = t;
            var file = File with { Type = (PhotometricType)kind, Vertical = vertical, Horizontal = horizontal, Candelas = candelas };
            var problems = StudyEvaluation.Check(Sound with { Distributions = [file] });
            if (problems.Count == 0) _ = new LuminousIntensityDistribution(file.Type, vertical, horizontal, candelas);
            else Interlocked.Increment(ref refused);
        }, iter: 2_000);
        Assert.True(refused > 100);
    }

    [Fact]
    public void are_found_wherever_a_spectrum_would_be_refused() =>
        Gen.Select(Gen.Int[300, 310].Select(n => (double)n).Array[0, 4], Gen.Int[-1, 2].Select(n => (double)n).Array[0, 4]).Sample(t =>
        {
            var (nanometres, values) = t;
            if (StudyEvaluation.Check(Sound with { Spectra = [Spectrum with { Nanometres = nanometres, Values = values }] }).Count > 0) return;
            var samples = nanometres.Zip(values, (nm, value) => new SpectralSample(Wavelength.FromNanometres(nm), value));
            _ = new SpectralDistribution("own", new(samples), SpectralScale.Relative, Source);
            Assert.Equal(nanometres.Length, values.Length);
        }, iter: 2_000);

    private static Length Metres(double metres) => Length.FromMetres(metres);

    private static Study WithArea(Study study, Func<Area, Area> edit) => study with { Areas = [edit(study.Areas[0]), .. study.Areas.Skip(1)] };

    private static Study WithLight(Study study, Func<AreaLight, AreaLight> edit) => WithArea(study, area => area with { Light = edit(area.Light ?? Light) });

    private static Study WithPlace(Study study, Func<LuminairePlace, LuminairePlace> edit) => WithLight(study, light => light with { Layout = [light.Layout[0], edit(light.Layout[1])] });

    private static Study WithSet(Study study, Func<ReadingSet, ReadingSet> edit) => WithLight(study, light => light with { Readings = [edit(light.Readings[0])] });

    private static Study WithTarget(Study study, Func<LightTarget, LightTarget> edit) => WithArea(study, area =>
    {
        var season = area.Seasons[0];
        var stage = season.Stages[0];
        return area with { Seasons = [season with { Stages = [stage with { Target = edit(stage.Target ?? Target) }, .. season.Stages.Skip(1)] }, .. area.Seasons.Skip(1)] };
    });
}
