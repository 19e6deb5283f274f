using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Light.Keep;
using RetrofitCalc.Web.Tests.Harness;

namespace RetrofitCalc.Web.Tests.Features.Light.Keep;

public class Several_changes_at_once
{
    private static readonly (string, string) Rack = ("tubes", "rack");
    private static readonly (string, string) Growing = ("Plugs", "Growing");

    /// <summary>Two lines over the rack, of which the option exchanges the first, and one elsewhere.</summary>
    private static Study Study()
    {
        var study = SmallStudies.TenWithTubes();
        return study with
        {
            Areas = [study.Areas[0], new Area { Id = "hall", Name = "Hall" }],
            Lines = [study.Lines[0], study.Lines[0] with { Id = "kept" }, study.Lines[0] with { Id = "hall", Area = "hall" }],
        };
    }

    [Fact]
    public void hang_all_lines_of_the_area_and_exchange_only_what_the_option_exchanges()
    {
        var change = new WhatIfChange { Height = Length.FromMetres(0.25), Product = "dw-4ft-t8-12", PerLuminaire = 3 };
        var option = change.Apply(Study(), Rack, Growing).Options[0];
        Assert.Equal(["shelf", "kept"], option.Measures.Select(measure => measure.Line));
        Assert.Equal(new DirectWire("dw-4ft-t8-12", 3), option.Measures[0].Measure);
        Assert.IsType<KeepAsIs>(option.Measures[1].Measure);
        Assert.All(option.Measures, measure => Assert.Equal(0.25, measure.Height!.Value.Metres));
        Assert.Empty(option.Stages);
    }

    [Fact]
    public void draw_the_rows_of_the_area_apart_and_leave_other_areas()
    {
        var option = new WhatIfChange { RowSpread = 1.5 }.Apply(Study(), Rack, Growing).Options[0];
        Assert.Equal(["shelf", "kept"], option.Measures.Where(measure => measure.RowSpread == 1.5).Select(measure => measure.Line));
    }

    [Fact]
    public void keep_prices_typed_for_the_same_product_and_drop_those_of_another()
    {
        var study = Study();
        study = study with { Options = [study.Options[0] with { Measures = [study.Options[0].Measures[0] with { PartsPerLuminaire = Money.FromUnits(40) }] }] };
        Assert.Equal(40, new WhatIfChange { Height = Length.FromMetres(0.25) }.Apply(study, Rack, Growing).Options[0].Measures[0].PartsPerLuminaire!.Value.Units);
        Assert.Null(new WhatIfChange { Product = "dw-4ft-t8-12" }.Apply(study, Rack, Growing).Options[0].Measures[0].PartsPerLuminaire);
    }

    [Fact]
    public void change_the_step_of_one_stage_and_leave_its_other_changes()
    {
        var study = Study();
        var dimmed = new StageChange("rack", "Plugs", "Growing") { Dimming = 0.8 };
        var other = new StageChange("rack", "Plugs", "Hardening") { Dimming = 0.5 };
        study = study with { Options = [study.Options[0] with { Stages = [other, dimmed] }] };
        var stages = new WhatIfChange { Step = "half" }.Apply(study, Rack, Growing).Options[0].Stages;
        Assert.Equal([other, dimmed with { LitStep = "half" }], stages);
        Assert.Equal([new StageChange("rack", "Plugs", "Growing") { LitStep = "" }], new WhatIfChange { Step = "" }.Apply(Study(), Rack, Growing).Options[0].Stages);
    }
}
