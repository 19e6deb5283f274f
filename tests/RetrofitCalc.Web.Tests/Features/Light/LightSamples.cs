using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light;

/// <summary>Benches and light small enough to redo by hand. All invented.</summary>
internal static class LightSamples
{
    public static readonly ReadingPlace First = new(0, 0);

    /// <summary>A bench of 1.2 by 0.6 m with a blank quadrant of 3 by 2 readings, 0.3 m under the lamps.</summary>
    public static Study Bench(ReadingPattern pattern = ReadingPattern.Quadrant, int columns = 3, int rows = 2)
    {
        var (x, y) = ReadingGrids.Lay(pattern, Length.FromMetres(1.2), Length.FromMetres(0.6), new(columns, rows));
        var study = SmallStudies.TenWithTubes();
        var light = new AreaLight
        {
            BenchLength = Length.FromMetres(1.2), BenchWidth = Length.FromMetres(0.6),
            Readings = [new ReadingSet { Id = "readings-1", Pattern = pattern, Height = Length.FromMetres(0.3), Columns = x, Rows = y, Values = ReadingGrids.Blank(x.Count, y.Count) }],
        };
        return study with { Areas = [study.Areas[0] with { Light = light }] };
    }

    /// <summary>16 hours of so much light, a tenth below it at the dimmest place.</summary>
    public static LightFigures Figures(double micromoles) => new(
        PhotonFluxDensity.FromMicromolesPerSquareMetre(micromoles), PhotonFluxDensity.FromMicromolesPerSquareMetre(micromoles * 0.9), PhotonFluxDensity.FromMicromolesPerSquareMetre(micromoles * 1.1),
        DailyLight.Of(PhotonFluxDensity.FromMicromolesPerSquareMetre(micromoles), OperatingTime.FromHours(16)), 0.2, null);

    public static LightTarget AtLeast(double moles) => new() { Crop = "Invented greens", LeastDaily = DailyLight.FromMolesPerSquareMetre(moles), Source = Provenance.None };

    public static StageLight Stage(LightVerdict verdict, string area = "rack") => new()
    {
        Area = area, Season = "Plugs", Stage = "Growing", Verdict = verdict, Photoperiod = OperatingTime.FromHours(16),
    };

    /// <summary>182 now, 158 after: 13 % less; 10.5 and 9.1 mol/m² a day where 10 are wanted.</summary>
    public static StageLight Loser(string area = "rack") => Stage(LightVerdict.Loses, area) with
    {
        Change = 158.0 / 182 - 1, Now = Figures(182), After = Figures(158), Target = AtLeast(10),
    };

    public static StageLight Keeper(string area) => Stage(LightVerdict.Keeps, area) with
    {
        Change = -0.03, Now = Figures(200), After = Figures(194), Target = AtLeast(10),
    };
}
