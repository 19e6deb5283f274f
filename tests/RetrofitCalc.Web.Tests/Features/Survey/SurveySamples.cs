using System.Globalization;
using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Surveys;
using RetrofitCalc.Files.Typing;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Tests.Features.Survey;

/// <summary>Invented surveys small enough to count by hand, with a catalogue of two set-ups: two lamps at 59 W, one lamp at 31 W.</summary>
internal static class SurveySamples
{
    public const string TwoLamps = "2 × 4 ft lamps, instant start";
    public const string OneLamp = "1 × 4 ft lamp, instant start";

    public static CatalogueExtract Catalogue { get; } = new()
    {
        Lamps = [new Lamp { Id = "lamp", Name = "4 ft lamp", Source = Provenance.None, Family = "T8", Base = "G13", Length = Length.FromMetres(1.2), NominalPower = Power.FromWatts(32) }],
        SetUps = [SetUp("two", TwoLamps, 2, 59), SetUp("one", OneLamp, 1, 31)],
    };

    /// <summary>Hall with lines a (10 of two lamps) and b (4 of one lamp), barn with line c (6 of two lamps).</summary>
    public static Study HallAndBarn() => new()
    {
        Name = "Invented site",
        Site = new Site { Name = "Invented site" },
        Areas = [new Area { Id = "hall", Name = "Hall" }, new Area { Id = "barn", Name = "Barn" }],
        Lines = [Line("a", "hall", "two", 10), Line("b", "hall", "one", 4), Line("c", "barn", "two", 6)],
        Tariff = Tariff.Flat(EnergyPrice.FromPerKilowattHour(0.1)),
        Catalogue = Catalogue,
    };

    public static SurveyContext Context(Study study) => new(CultureInfo.GetCultureInfo("en-US"), LengthUnit.Feet, study.Areas, study.Catalogue);

    public static EditState State(Study study) => new(study, []);

    public static SurveyLine Line(this EditState state, string id) => state.Study.Lines.Single(l => l.Id == id);

    private static SurveyLine Line(string id, string area, string setUp, int count) => new() { Id = id, Name = $"Line {id}", Area = area, SetUp = setUp, Count = count };

    private static SetUp SetUp(string id, string name, int lamps, double watts) => new()
    {
        Id = id,
        Name = name,
        Lamp = "lamp",
        Ballasts = [new BallastPosition(null, lamps)],
        TestedPower = Power.FromWatts(watts),
        Source = new Provenance(EvidenceKind.Tested, "invented for a test"),
    };
}
