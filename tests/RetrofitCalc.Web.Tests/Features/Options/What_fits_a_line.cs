using Microsoft.Extensions.DependencyInjection;
using RetrofitCalc.Data;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Options;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Options;

public class What_fits_a_line
{
    [Fact]
    public async Task is_the_same_base_and_length_and_the_rest_says_why_not()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenLuminaires());
        var fit = ProductFit.Of(open.Study, await open.CatalogueAsync());
        Assert.NotEmpty(fit.TubesFor("shelf"));
        Assert.All(fit.TubesFor("shelf"), t => Assert.Equal(("G13", 4), (t.Base, (int)Math.Round(t.Length.Feet))));
        Assert.Contains("the lampholders here take G13", fit.WhyNot("shelf", "dw-4ft-t5-26"), StringComparison.Ordinal);
        Assert.Contains("the lamps here are 4 ft", fit.WhyNot("shelf", "dw-2ft-t8-8"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task leaves_a_line_as_it_is_where_nothing_in_the_catalogue_fits()
    {
        await using var open = await OpenStudy.Of(SmallStudies.TenLuminaires());
        var all = await open.CatalogueAsync();
        var fit = ProductFit.Of(open.Study, all with { Tubes = [.. all.Tubes.Where(t => t.Base != "G13")] });
        Assert.IsType<KeepAsIs>(OptionTemplates.For(open.Study, fit, open.Study.Lines[0], MeasureKind.DirectWire));
    }

    [Fact]
    public void prices_typed_for_one_tube_do_not_carry_over_to_another()
    {
        var old = new LineMeasure("shelf", new DirectWire("a", 2)) { PartsPerLuminaire = Money.FromUnits(18) };
        Assert.Equal(18, OptionEdits.Changed(old, new DirectWire("a", 1)).PartsPerLuminaire!.Value.Units);
        Assert.Null(OptionEdits.Changed(old, new DirectWire("b", 2)).PartsPerLuminaire);
        Assert.Null(OptionEdits.Changed(old, new RenewLikeForLike()).PartsPerLuminaire);
    }

    [Fact]
    public void a_copied_option_has_a_name_and_an_id_of_its_own()
    {
        var study = OptionEdits.Copy(OptionEdits.Copy(SmallStudies.TenWithTubes(), 0), 0);
        Assert.Equal(["Tubes", "Tubes, copy", "Tubes, copy 2"], study.Options.Select(o => o.Name));
        Assert.Equal(3, study.Options.Select(o => o.Id).Distinct().Count());
    }

    [Fact]
    public void deleting_the_option_asked_for_asks_for_the_first_again()
    {
        var study = OptionEdits.Copy(SmallStudies.TenWithTubes(), 0);
        var after = OptionEdits.Remove(new(study with { ChosenOption = study.Options[1].Id }, []), 1).Study;
        Assert.Null(after.ChosenOption);
        Assert.Equal("Tubes", Assert.Single(after.Options).Name);
    }
}
