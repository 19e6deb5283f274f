using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports.Tests.Light;

/// <summary>The worked example with verdicts of our own, so that words and tables can be checked whatever its readings say.</summary>
internal static class LightSamples
{
    public static Provenance Source { get; } = new(EvidenceKind.Nameplate, "Invented for this test");

    public static StudyResult Quillmere => Samples.Quillmere;

    public static IReadOnlyList<Area> Growing { get; } = [.. Quillmere.Study.Areas.Where(area => area.GrowsCrop)];

    /// <summary>The option asked for with a stage of our own in each growing area.</summary>
    public static StudyResult With(params StageLight[] stages) => WithLight(new CropLightResult(stages, []));

    public static StudyResult WithLight(CropLightResult light) => Edited(option => option with { Light = light });

    public static StudyResult Edited(Func<OptionResult, OptionResult> edit) => Quillmere with
    {
        Options = [.. Quillmere.Options.Select(option => option.Option.Id == Quillmere.Chosen!.Option.Id ? edit(option) : option)],
    };

    /// <summary>182 now and 158 after is a loss of 13 %; in 16 h that is 10.5 and 9.1 mol.</summary>
    public static StageLight Losing(Area area) => Stage(area, LightVerdict.Loses) with
    {
        Change = -0.132, ChangeUncertainty = 0.04, Now = Figures(182), After = Figures(158), AtEnd = Figures(150),
        Target = new LightTarget { Crop = "lettuce", LeastDaily = DailyLight.FromMolesPerSquareMetre(10), MostDaily = DailyLight.FromMolesPerSquareMetre(14), Source = Source },
        RestsOn = "45 readings at two heights",
        Fixes = [new() { Text = "18 W tube instead of 14 W", Lines = ["x"], Product = "tube", Light = Figures(184), ExtraPower = Power.FromWatts(240), ExtraKilowattHours = 1402, WatchOut = "Less even." }],
    };

    public static StageLight Keeping(Area area, double change = -0.03) => Stage(area, LightVerdict.Keeps) with
    {
        Change = change, ChangeUncertainty = 0.05, Now = Figures(100), After = Figures(100 * (1 + change)), AtEnd = Figures(95), RestsOn = "36 readings at one height",
    };

    public static StageLight NotKnown(Area area) => Stage(area, LightVerdict.NotKnown) with { Ask = $"Read the light in {area.Name} on a grid at the height of the crop." };

    public static StageLight Stage(Area area, LightVerdict verdict) => new()
    {
        Area = area.Id, Season = area.Seasons[0].Name, Stage = area.Seasons[0].Stages[0].Name, Verdict = verdict, Photoperiod = OperatingTime.FromHours(16),
    };

    public static LightFigures Figures(double mean) => new(
        PhotonFluxDensity.FromMicromolesPerSquareMetre(mean), PhotonFluxDensity.FromMicromolesPerSquareMetre(mean * 0.56), PhotonFluxDensity.FromMicromolesPerSquareMetre(mean * 1.33),
        DailyLight.Of(PhotonFluxDensity.FromMicromolesPerSquareMetre(mean), OperatingTime.FromHours(16)), 0.22, 0.47);
}
