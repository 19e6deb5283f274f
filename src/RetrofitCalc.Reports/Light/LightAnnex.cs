using RetrofitCalc.Engine.CropLight;
using RetrofitCalc.Engine.Results;

namespace RetrofitCalc.Reports;

/// <summary>Annex D: light on crops, bench by bench, for people, and of what spectrum.</summary>
/// <param name="Overview">Every stage with its verdict.</param>
/// <param name="Areas">A part for each growing area.</param>
/// <param name="More">Targets, people, spectra.</param>
public sealed record LightAnnex(ReportSection Overview, IReadOnlyList<LightAreaPart> Areas, IReadOnlyList<ReportSection> More)
{
    private static readonly string[] Conventions =
    [
        "Light is PPFD, photons of 400 to 700 nm on the level of the crop. The mean is weighted by the area each reading stands for; DLI, the light of a day, is mean light times lit hours times 0.0036 (E-53).",
        "Light after the change is what the model fitted to the readings says of the new lamps when new; at the end is the same when lamps, tubes or luminaires are due. Ranges hold 19 times in 20.",
    ];

    /// <summary>Null where no crop grows and light for people is not asked about.</summary>
    internal static LightAnnex? Of(SummaryContext context) => !context.CropGrows && context.Light.People.Count == 0 ? null : new(
        new("Whether the crop keeps its light", Conventions, context.Light.Stages.Count == 0 ? [] : [Verdicts(context)]),
        [.. context.Light.WorstFirst.Select(area => LightAreaPart.Of(area, context))],
        [.. LightTargets.Of(context), .. LightForPeople.Of(context), .. LightSpectra.Of(context)]);

    private static ReportTable Verdicts(SummaryContext context) => new("",
        [
            new("Area, season and stage", 2.4), new("Verdict", 1.7), new("Wanted", 1.5), new("Lit, h", 0.6, true),
            new("Now, mol/m² a day", 0.9, true), new("After", 0.7, true), new("At the end", 0.7, true), new("Rests on", 2.6),
        ],
        [.. context.Light.Stages.Select((stage, at) => new ReportRow(
            [
                $"{context.AreaName(stage.Area)}: {stage.Season}, {stage.Stage}", LightWords.Short(stage, context.Text), LightWords.Wanted(stage.Target, context.Text),
                context.Text.Number(stage.Photoperiod.Hours, 1), Daily(stage.Now, context), Daily(stage.After, context), Daily(stage.AtEnd, context),
                at > 0 && Basis(context.Light.Stages[at - 1]) == Basis(stage) ? "the same" : Basis(stage),
            ], Greyed: stage.Verdict == LightVerdict.Unchanged))]);

    private static string Basis(StageLight stage) => stage.Verdict == LightVerdict.NotKnown ? stage.Ask ?? "" : stage.RestsOn;

    private static string Daily(LightFigures? light, SummaryContext context) => light is null ? QuantityText.NotKnown : context.Text.DailyNumber(light.Daily);
}
