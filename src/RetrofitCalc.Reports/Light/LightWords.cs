using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Reports;

/// <summary>What becomes of the crop's light, in plain words: the same on pages and on paper.</summary>
public static class LightWords
{
    /// <summary>A verdict for a cell: "loses 13 % ± 4 %", "keeps, −3 % ± 4 %", "not known".</summary>
    public static string Short(StageLight stage, QuantityText text) => stage.Verdict switch
    {
        LightVerdict.Loses => IsLoss(stage) ? $"loses {text.Percent(-stage.Change!.Value)}{text.GiveOrTake(stage.ChangeUncertainty)}" : "too little",
        LightVerdict.KeepsAtFirst => stage.BelowTargetAfterYears is { } years ? $"enough for {text.Years(years)} only" : "enough at first only",
        LightVerdict.Keeps => "keeps" + (stage.Change is { } change ? $", {text.Change(change)}{text.GiveOrTake(stage.ChangeUncertainty)}" : "") + Extra(stage),
        LightVerdict.Unchanged => "unchanged" + Extra(stage),
        _ => QuantityText.NotKnown,
    };

    /// <summary>The worst of all areas for a cell, naming it where there are several.</summary>
    public static string Short(CropLightResult light, Study study, QuantityText text)
    {
        if (light.WorstFirst is not [var worst, ..] areas) return study.Areas.Any(area => area.GrowsCrop) ? QuantityText.NotKnown : QuantityText.DoesNotApply;
        var unknown = areas.Count(area => area.Verdict == LightVerdict.NotKnown);
        if (unknown == areas.Count) return QuantityText.NotKnown;
        if (worst.Verdict == LightVerdict.NotKnown) return $"not known in {unknown} of {areas.Count} areas";
        var others = unknown > 0 ? $"; not known in {unknown} of {areas.Count} areas" : "";
        var name = areas.Count > 1 && worst.Verdict is LightVerdict.Loses or LightVerdict.KeepsAtFirst ? $": {Area(study, worst.Area)}" : "";
        var over = worst.TooMuch ? 0 : areas.Count(area => area.TooMuch);
        return Short(worst, text) + name + (over > 0 ? $"; more than wanted in {over} of {areas.Count} areas" : "") + others;
    }

    /// <summary>The worst of all areas in two or three words, for narrow columns.</summary>
    public static string Brief(CropLightResult light, Study study, QuantityText text)
    {
        var areas = light.WorstByArea;
        return light.WorstFirst is not [var worst, ..] || worst.Verdict == LightVerdict.NotKnown && areas.All(area => area.Verdict == LightVerdict.NotKnown) ? Short(light, study, text)
            : worst.Verdict switch
            {
                LightVerdict.NotKnown => "partly known",
                LightVerdict.Loses => IsLoss(worst) ? $"loses {text.Percent(-worst.Change!.Value)}" : "too little",
                LightVerdict.Keeps => areas.Any(area => area.TooMuch) ? "more than wanted" : "keeps",
                _ => Short(worst, text),
            };
    }

    /// <summary>A verdict in a sentence that names the place.</summary>
    public static string Sentence(StageLight stage, Study study, QuantityText text)
    {
        var place = Place(stage, study);
        return stage.Verdict switch
        {
            LightVerdict.Loses when IsLoss(stage) =>
                $"{place}: the crop would lose {text.Percent(-stage.Change!.Value)}{text.GiveOrTake(stage.ChangeUncertainty)} of its light{Against(stage.After, stage.Target, text)}.",
            LightVerdict.Loses => $"{place}: too little light{Against(stage.After, stage.Target, text)}.",
            LightVerdict.KeepsAtFirst =>
                $"{place}: enough light when new, too little {(stage.BelowTargetAfterYears is { } years ? $"after {text.Years(years)}" : "before the lamps are due")}{Against(stage.AtEnd, stage.Target, text)}.",
            LightVerdict.Keeps => $"{place}: the crop keeps its light{(stage.Change is { } change ? $" ({text.Change(change)}{text.GiveOrTake(stage.ChangeUncertainty)})" : "")}{Over(stage, text)}.{Hopeless(stage)}",
            LightVerdict.Unchanged => $"{place}: nothing is done over the crop{Over(stage, text)}.{Hopeless(stage)}",
            _ => $"{place}: crop light not known{Rated(stage, text)}.{(stage.Ask is { } ask ? " " + ask : "")}",
        };
    }

    /// <summary>", more than wanted"; empty where the light is not above the most the crop wants, or not known.</summary>
    public static string Extra(StageLight stage) => stage.TooMuch ? ", more than wanted" : "";

    /// <summary>" No number of hours …"; empty where the target can be reached, or is not known.</summary>
    public static string Hopeless(StageLight stage) => stage.Unreachable ? " No number of hours the crop bears gives what it wants." : "";

    /// <summary>"18 W tube instead of 14 W, 240 W more".</summary>
    public static string Fix(LightFix fix, QuantityText text) => $"{fix.Text}, {ExtraLoad(fix, text)}";

    /// <summary>"240 W more", "60 W less", "no watts more", with the energy where only the hours change.</summary>
    public static string ExtraLoad(LightFix fix, QuantityText text)
    {
        var watts = Math.Round(fix.ExtraPower.Watts, MidpointRounding.AwayFromZero);
        var energy = Math.Round(fix.ExtraKilowattHours, MidpointRounding.AwayFromZero);
        return (watts, energy) switch
        {
            ( > 0, _) => $"{text.Watts(fix.ExtraPower)} more",
            ( < 0, _) => $"{text.Watts(Power.FromWatts(-watts))} less",
            (_, > 0) => $"{text.Number(energy)}\u00A0kWh a year more",
            (_, < 0) => $"{text.Number(-energy)}\u00A0kWh a year less",
            _ => "no watts more",
        };
    }

    /// <summary>What the crop wants: "10.0–14.0 mol/m² a day", "at least 150 µmol/m²·s", "not said".</summary>
    public static string Wanted(LightTarget? target, QuantityText text) => target switch
    {
        null => "not said",
        { LeastDaily: { } least, MostDaily: { } most } => $"{text.DailyNumber(least)}–{text.Daily(most)}",
        { LeastDaily: { } least } => $"at least {text.Daily(least)}",
        { LeastLight: { } least, MostLight: { } most } => $"{text.Number(least.MicromolesPerSquareMetre)}–{text.Light(most)}",
        { LeastLight: { } least } => $"at least {text.Light(least)}",
        { MostDaily: { } most } => $"at most {text.Daily(most)}",
        { MostLight: { } most } => $"at most {text.Light(most)}",
        _ => "no bound",
    };

    public static string Area(Study study, string id) => study.Areas.FirstOrDefault(area => area.Id == id)?.Name ?? id;

    /// <summary>"; by rated output the lamps would send out 12 % less", which says nothing of what reaches the crop.</summary>
    public static string Rated(StageLight stage, QuantityText text) => stage.RatedChange switch
    {
        null => "",
        var change when Math.Round(change.Value * 100) == 0 => "; by rated output the lamps would send out as much",
        var change => $"; by rated output the lamps would send out {text.Percent(Math.Abs(change.Value))} {(change > 0 ? "more" : "less")}",
    };

    private static bool IsLoss(StageLight stage) => stage.Change is { } change && Math.Round(change * 100, MidpointRounding.AwayFromZero) < 0;

    /// <summary>The area, and the stage where the area has several.</summary>
    private static string Place(StageLight stage, Study study)
    {
        var area = study.Areas.FirstOrDefault(a => a.Id == stage.Area);
        var several = area is not null && area.Seasons.SelectMany(season => season.Stages).Select(s => s.Name).Distinct().Count() > 1;
        return Area(study, stage.Area) + (several ? $", {stage.Stage}" : "");
    }

    /// <summary>", more than wanted: 52 µmol/m²·s, 27–41 µmol/m²·s wanted".</summary>
    private static string Over(StageLight stage, QuantityText text) => stage is { TooMuch: true, After: { } light, Target: { } target }
        ? $"{Extra(stage)}: {(target.MostLight is null ? text.Daily(light.Daily) : text.Light(light.Mean))}, {Wanted(target, text)} wanted"
        : "";

    private static string Against(LightFigures? light, LightTarget? target, QuantityText text) => (light, target) switch
    {
        ({ } figures, { LeastDaily: { } least }) => $": {text.Daily(figures.Daily)}, at least {text.DailyNumber(least)} wanted",
        ({ } figures, { LeastLight: { } least }) => $": {text.Light(figures.Mean)}, at least {text.Number(least.MicromolesPerSquareMetre)} wanted",
        _ => "",
    };
}
