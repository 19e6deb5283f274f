using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Crops;

namespace RetrofitCalc.Files.Tests.Crops;

/// <summary>Figures as the papers and bulletins named in each row give them; rows from memory are said to be.</summary>
public class The_crop_targets
{
    [Fact]
    public void have_each_a_name_of_its_own_and_a_source()
    {
        Assert.Equal(44, CropTargets.All.Count);
        Assert.Equal(44, CropTargets.All.Select(target => target.Crop).Distinct(StringComparer.OrdinalIgnoreCase).Count());
        Assert.All(CropTargets.All, target => Assert.NotEmpty(target.Source.Source));
    }

    // Both et al.; Dou et al. 2018; Craver et al. 2019; Currey et al. 2012; Oh et al. 2009; Purdue and others as each row says.
    [Theory]
    [InlineData("Lettuce, head and butterhead", 17, null)]
    [InlineData("Basil, sweet", 12.9, null)]
    [InlineData("Cilantro", 18, null)]
    [InlineData("Microgreens: arugula, mizuna, mustard", 6, 12.0)]
    [InlineData("Strawberry, fruiting", 12, 30.0)]
    [InlineData("Tomato, fruiting", 20, 30.0)]
    [InlineData("Pepper, sweet, fruiting", 20, 30.0)]
    [InlineData("Bedding plants, plugs and seedlings", 10, 12.0)]
    [InlineData("Cuttings, rooting", 8, 10.0)]
    [InlineData("Cyclamen", 5.8, 11.5)]
    [InlineData("African violet", 4, 6.0)]
    [InlineData("Poinsettia, finish", 10, 12.0)]
    [InlineData("Chrysanthemum, pot", 10, 15.0)]
    public void give_the_daily_light_of_their_source(string crop, double least, double? most)
    {
        var target = CropTargets.Find(crop)!;
        Assert.Equal((least, most), (target.LeastDaily?.MolesPerSquareMetre, target.MostDaily?.MolesPerSquareMetre));
    }

    // 241 and 443 µmol for 12 h; 160 µmol for 12 h; 1000 µmol for 16 h: the sources' own pairs, to their rounding.
    [Theory]
    [InlineData("Strawberry, propagation", 443, 12.0)]
    [InlineData("Phalaenopsis and shade foliage", 160, 12.0)]
    [InlineData("Lettuce, most light tried", 1000, 16.0)]
    public void agree_with_the_light_and_hours_of_their_source(string crop, double micromoles, double hours) =>
        Assert.Equal(CropTargets.Find(crop)!.MostDaily!.Value.MolesPerSquareMetre,
            DailyLight.Of(PhotonFluxDensity.FromMicromolesPerSquareMetre(micromoles), OperatingTime.FromHours(hours)).MolesPerSquareMetre, 0.05);

    // 50, 250 and 1000 fc at 10.764 lx and 74 lx per µmol of cool white.
    [Theory]
    [InlineData("Interior foliage, low light", 50, 250.0)]
    [InlineData("Interior foliage, medium light", 250, 1000.0)]
    public void give_foliage_its_foot_candles_as_photons(string crop, double least, double most)
    {
        var target = CropTargets.Find(crop)!;
        Assert.Equal(least * 10.764 / 74, target.LeastLight!.Value.MicromolesPerSquareMetre, 0.6);
        Assert.Equal(most * 10.764 / 74, target.MostLight!.Value.MicromolesPerSquareMetre, 0.6);
    }

    [Theory]
    [InlineData("Tomato, fruiting", 17, DayLengthResponse.Neutral)]
    [InlineData("Pepper, sweet, fruiting", 20, DayLengthResponse.Neutral)]
    [InlineData("Poinsettia, finish", 12, DayLengthResponse.ShortDay)]
    [InlineData("Chrysanthemum, pot", 13, DayLengthResponse.ShortDay)]
    [InlineData("Spinach, baby, range tested", null, DayLengthResponse.LongDay)]
    [InlineData("Strawberry, fruiting", null, DayLengthResponse.NotKnown)]
    public void say_how_long_a_day_the_crop_bears(string crop, int? hours, DayLengthResponse response)
    {
        var target = CropTargets.Find(crop)!;
        Assert.Equal((hours, response), (target.MostHours?.Hours, target.DayLength));
    }

    [Fact]
    public void say_what_was_only_a_range_tested() =>
        Assert.All(CropTargets.All.Where(target => target.Crop.Contains("range tested")), target => Assert.StartsWith("Range tested, not a target", target.Note));

    [Fact]
    public void mark_weak_sources_and_memory()
    {
        Assert.True(CropTargets.Find("African violet")!.WeakSource);
        Assert.True(CropTargets.Find("cucumber, fruiting")!.Source.FromMemory);
        Assert.All(CropTargets.All.Where(target => target.Source.FromMemory), target => Assert.Equal(EvidenceKind.Practice, target.Source.Kind));
    }

    [Fact]
    public void hold_no_bounds_the_wrong_way_round() =>
        Assert.All(CropTargets.All, target =>
        {
            Assert.True((target.LeastDaily?.MolesPerSquareMetre ?? 0) <= (target.MostDaily?.MolesPerSquareMetre ?? double.MaxValue));
            Assert.True((target.LeastLight?.MicromolesPerSquareMetre ?? 0) <= (target.MostLight?.MicromolesPerSquareMetre ?? double.MaxValue));
            Assert.True((target.FewestHours?.Hours ?? 0) <= (target.MostHours?.Hours ?? 24));
        });

    [Fact]
    public void have_no_row_for_a_crop_nobody_named() => Assert.Null(CropTargets.Find("Bananas, fruiting"));
}
