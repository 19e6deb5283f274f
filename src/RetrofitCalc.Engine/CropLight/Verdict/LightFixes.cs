using RetrofitCalc.Engine.Catalogue;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.CropLight;

/// <summary>Carries a change that keeps the light into its option.</summary>
public static class LightFixes
{
    /// <summary>The study with a fix in place. Prices given for the parts of what is exchanged no longer hold and are left to the catalogue.</summary>
    /// <param name="study">The study.</param>
    /// <param name="optionId">Id of the option.</param>
    /// <param name="area">Id of the area.</param>
    /// <param name="fix">The fix, as the result of this option offered it.</param>
    /// <exception cref="ArgumentException">No such option.</exception>
    public static Study Apply(Study study, string optionId, string area, LightFix fix)
    {
        var option = study.Options.FirstOrDefault(each => each.Id == optionId) ?? throw new ArgumentException($"The study has no option {optionId}.", nameof(optionId));
        var changed = Applied(study.Catalogue, option, fix);
        return study with { Options = [.. study.Options.Select(each => each.Id == optionId ? changed : each)] };
    }

    /// <summary>An option with a fix in place.</summary>
    /// <param name="catalogue">Tells tubes from luminaires.</param>
    /// <param name="option">The option.</param>
    /// <param name="fix">The fix.</param>
    internal static RetrofitOption Applied(CatalogueExtract catalogue, RetrofitOption option, LightFix fix)
    {
        if (fix.Stage is { } stage)
            option = option with { Stages = Merged(option.Stages, stage) };
        return fix is { Height: null, Product: null, PerLuminaire: null } ? option
            : option with { Measures = [.. fix.Lines.Aggregate(option.Measures, (measures, line) => Changed(measures, line, catalogue, fix))] };
    }

    private static IReadOnlyList<LineMeasure> Changed(IReadOnlyList<LineMeasure> measures, string line, CatalogueExtract catalogue, LightFix fix)
    {
        var old = measures.FirstOrDefault(measure => measure.Line == line) ?? new LineMeasure(line, new KeepAsIs());
        var measure = MeasureOf(old.Measure, catalogue, fix);
        var changed = old with { Measure = measure, Height = fix.Height ?? old.Height };
        if (measure != old.Measure)
            changed = changed with { PartsPerLuminaire = null };
        if (measure.GetType() != old.Measure.GetType())
            changed = changed with { LabourPerLuminaire = null };
        return [.. measures.Where(each => each.Line != line), changed];
    }

    private static Measure MeasureOf(Measure old, CatalogueExtract catalogue, LightFix fix) => (old, fix.Product, fix.PerLuminaire) switch
    {
        (DirectWire wire, null, { } tubes) => wire with { TubesPerLuminaire = (int)Math.Round(tubes) },
        (ReplaceLuminaire replace, null, { } luminaires) => replace with { PerExisting = luminaires },
        (_, null, _) => old,
        (DirectWire wire, { } tube, _) when IsTube(catalogue, tube) => wire with { Tube = tube },
        (_, { } tube, _) when IsTube(catalogue, tube) => new DirectWire(tube),
        (ReplaceLuminaire replace, { } luminaire, _) => replace with { Luminaire = luminaire },
        (_, { } luminaire, _) => new ReplaceLuminaire(luminaire),
    };

    private static bool IsTube(CatalogueExtract catalogue, string id) => catalogue.Tubes.Any(tube => tube.Id == id);

    private static IReadOnlyList<StageChange> Merged(IReadOnlyList<StageChange> changes, StageChange next)
    {
        bool IsSame(StageChange change) => (change.Area, change.Season, change.Stage) == (next.Area, next.Season, next.Stage);
        var old = changes.FirstOrDefault(IsSame);
        var merged = old is null ? next : old with
        {
            LightsOn = next.LightsOn ?? old.LightsOn, LightsOff = next.LightsOff ?? old.LightsOff,
            LitStep = next.LitStep ?? old.LitStep, Dimming = next.Dimming ?? old.Dimming,
        };
        return [.. changes.Where(change => !IsSame(change)), merged];
    }
}
