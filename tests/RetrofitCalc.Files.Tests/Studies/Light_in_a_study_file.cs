using System.Text;
using NodaTime;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Studies;

namespace RetrofitCalc.Files.Tests.Studies;

public class Light_in_a_study_file
{
    private static readonly Provenance Invented = new(EvidenceKind.Invented, "Invented for tests");

    private static readonly ReadingSet Set = new()
    {
        Id = "low", Pattern = ReadingPattern.Crossings, Unit = LightUnit.FootCandles, Conversion = new LuxConversion(74, 0.1, Invented), Height = Length.FromMetres(0.3),
        Columns = [-0.6, 0, 0.6], Rows = [-0.3, 0.3], Values = [[120.5, null, 118], [117, 121, null]], LitStep = "outer", Date = new LocalDate(2026, 10, 5), RoomDark = true, Confirmed = [4],
    };

    private static Study With(AreaLight light)
    {
        var study = SmallStudy.Make();
        return study with { Areas = [study.Areas[0] with { Light = light }, study.Areas[1]] };
    }

    private static Study Again(Study study) => StudyFile.Read(StudyFile.Write(study)).Value!;

    [Fact]
    public void keeps_every_reading_and_every_blank_in_its_place()
    {
        var set = Assert.Single(Again(With(new AreaLight { Readings = [Set] })).Areas[0].Light!.Readings);
        Assert.Equal([-0.6, 0, 0.6], set.Columns);
        Assert.Equal([[120.5, null, 118], [117, 121, null]], set.Values);
        Assert.Equal(Set with { Columns = set.Columns, Rows = set.Rows, Values = set.Values, Confirmed = set.Confirmed }, set);
        Assert.Equal([4], set.Confirmed);
    }

    [Fact]
    public void keeps_places_in_metres_and_shares_as_shares()
    {
        var light = new AreaLight
        {
            BenchLength = Length.FromMetres(1.2), Surroundings = new Surroundings(Length.FromMetres(0.4), new CavityShare(0.3, 0.5, 0.8)),
            Layout = [new LuminairePlace("line-1", new PlanePoint(-0.3, 0.1), 90) { HigherBy = 0.05, TiltDegrees = -15 }],
            Stray = [new StrayLight("hall", PhotonFluxDensity.FromMicromolesPerSquareMetre(0.4))], People = new PeopleLight(null, Illuminance.FromLux(300)),
        };
        var text = Encoding.UTF8.GetString(StudyFile.Write(With(light)));
        Assert.Contains("\"benchLength\": 1.2", text);
        Assert.DoesNotContain("\"total\"", text); // computed from the three shares
        var again = Again(With(light)).Areas[0].Light!;
        Assert.Equal((light.Surroundings, light.Layout[0], light.Stray[0], light.People), (again.Surroundings, again.Layout[0], again.Stray[0], again.People));
    }

    [Fact]
    public void names_a_reading_that_is_no_number_by_its_row_and_column()
    {
        var text = Encoding.UTF8.GetString(StudyFile.Write(With(new AreaLight { Readings = [Set] }))).Replace("120.5", "\"120.5\"");
        var problem = Assert.Single(StudyFile.Read(Encoding.UTF8.GetBytes(text)).Problems);
        Assert.Equal("$.study.areas[0].light.readings[0].values[0][0]", problem.Path);
        Assert.Contains("Must be a number, or null where it is not known; found \"120.5\".", problem.Message);
    }

    [Fact]
    public void needs_a_place_in_whole_and_a_light_that_is_not_negative()
    {
        var text = Encoding.UTF8.GetString(StudyFile.Write(With(new AreaLight
        {
            Layout = [new LuminairePlace("line-1", new PlanePoint(0.25, 0))], Stray = [new StrayLight("hall", PhotonFluxDensity.FromMicromolesPerSquareMetre(0.4))],
        })));
        var half = text.Replace("\"x\": 0.25,", "").Replace("\"light\": 0.4", "\"light\": -0.4");
        Assert.Equal(["$.study.areas[0].light.layout[0].centre", "$.study.areas[0].light.stray[0].light"], StudyFile.Read(Encoding.UTF8.GetBytes(half)).Problems.Select(p => p.Path));
    }

    /// <summary>FL11 is one of the CIE's illuminants and comes with the program; FL99 is nobody's.</summary>
    [Fact]
    public void names_a_spectrum_that_nobody_has_and_one_that_takes_a_shipped_name()
    {
        var own = new StudySpectrum("own", "Own", Invented) { Nanometres = [400, 700], Values = [1, 1] };
        IEnumerable<string?> Problems(string product, string id) => StudyFile.Read(StudyFile.Write(
            SmallStudy.Make() with { Products = [new ProductLight("tube-4ft") { Spectrum = product }], Spectra = [own with { Id = id }] })).Problems.Select(p => p.Path);
        Assert.Empty(Problems("FL11", "own"));
        Assert.Empty(Problems("own", "own"));
        Assert.Equal(["$.study.products[0].spectrum"], Problems("FL99", "own"));
        Assert.Equal(["$.study.spectra[0].id"], Problems("FL11", "FL11"));
    }
}
