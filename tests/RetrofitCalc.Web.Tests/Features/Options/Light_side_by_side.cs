using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Reports;
using RetrofitCalc.Web.Features.Options;
using RetrofitCalc.Web.Tests.Features.Results;

namespace RetrofitCalc.Web.Tests.Features.Options;

public class Light_side_by_side
{
    private static readonly QuantityText Text = QuantityText.For(SampleResult.Study);

    [Fact]
    public void shows_the_daily_light_of_each_growing_area_beside_what_becomes_of_it()
    {
        // 100 µmol/m²·s in 16 h: 100 · 16 · 0.0036 = 5.8 mol.
        var light = PhotonFluxDensity.FromMicromolesPerSquareMetre(100);
        var hours = OperatingTime.FromHours(16);
        var now = new StageLight
        {
            Area = "culture", Season = "Summer", Stage = "growing", Verdict = LightVerdict.Unchanged, Photoperiod = hours,
            Now = new LightFigures(light, light, light, DailyLight.Of(light, hours), 0, null),
        };
        var result = SampleResult.With(o => o with { Light = new([now with { Verdict = LightVerdict.Keeps, Change = 0.052 }], []) }) with { Light = new([now], []) };
        var rows = SideBySideTable.Of(result, Text).Single(group => group.Name.StartsWith("Crop light", StringComparison.Ordinal)).Rows;
        Assert.Equal(["5.8\u00A0mol/m² a day", "keeps, +5\u00A0%"], Assert.Single(rows).Cells);
        Assert.Equal("Culture room", rows[0].Name);
    }
}
