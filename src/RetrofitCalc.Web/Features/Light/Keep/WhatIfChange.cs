using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Web.Features.Options;
using RetrofitCalc.Web.Shared;

namespace RetrofitCalc.Web.Features.Light.Keep;

/// <summary>Several changes of an option over one area, tried together. What is null stays as the option has it.</summary>
public sealed record WhatIfChange
{
    public Length? Height { get; init; }

    /// <summary>Catalogue id of a tube or luminaire.</summary>
    public string? Product { get; init; }

    /// <summary>Tubes in each luminaire, or new luminaires for each old one.</summary>
    public double? PerLuminaire { get; init; }

    /// <summary>Distance between rows by that of now.</summary>
    public double? RowSpread { get; init; }

    /// <summary>Name of the lit step of the stage; empty for all lamps.</summary>
    public string? Step { get; init; }

    public bool IsNothing => this == new WhatIfChange();

    /// <summary>The study with the changes in the option.</summary>
    /// <param name="at">Season and stage whose lit step it sets.</param>
    public Study Apply(Study study, (string Option, string Area) of, (string Season, string Stage) at)
    {
        var index = study.Options.ToList().FindIndex(option => option.Id == of.Option);
        var changed = study.Lines.Where(line => line.Area == of.Area)
            .Aggregate(study, (s, line) => OptionEdits.Line(s, index, line.Id, Line));
        return Step is null ? changed : OptionEdits.Option(changed, index, option => option with { Stages = Stages(option.Stages, of.Area, at) });
    }

    /// <summary>Lines the option leaves alone may hang at another height; only what it exchanges can be another product.</summary>
    private LineMeasure Line(LineMeasure old)
    {
        var measure = Product is { } product ? MeasureKinds.WithProduct(old.Measure, product) : old.Measure;
        measure = (measure, PerLuminaire) switch
        {
            (DirectWire wire, { } tubes) => wire with { TubesPerLuminaire = (int)Math.Round(tubes) },
            (ReplaceLuminaire replace, { } luminaires) => replace with { PerExisting = luminaires },
            _ => measure,
        };
        var hung = old with { Height = Height ?? old.Height, RowSpread = RowSpread ?? old.RowSpread };
        return OptionEdits.Changed(hung, measure) with { Height = hung.Height, RowSpread = hung.RowSpread };
    }

    private IReadOnlyList<StageChange> Stages(IReadOnlyList<StageChange> changes, string area, (string Season, string Stage) at)
    {
        var index = changes.ToList().FindIndex(change => (change.Area, change.Season, change.Stage) == (area, at.Season, at.Stage));
        return index >= 0
            ? changes.At(index, change => change with { LitStep = Step })
            : [.. changes, new StageChange(area, at.Season, at.Stage) { LitStep = Step }];
    }
}
