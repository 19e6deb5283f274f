using RetrofitCalc.Engine.Results;
using RetrofitCalc.Engine.Studies;

namespace RetrofitCalc.Engine.Cases;

/// <summary>Facts nobody has given: first those without which a line or area does not count, then those that narrow or protect.</summary>
public static class StudyQuestions
{
    /// <summary>The questions, the most useful first, each kind in survey order.</summary>
    /// <param name="context">The study's context.</param>
    public static IReadOnlyList<Question> Of(StudyContext context)
    {
        var study = context.Study;
        var growing = study.Areas.Where(area => area.GrowsCrop).Select(area => area.Id).ToHashSet();
        return
        [
            .. study.Lines.SelectMany(line => Uncounted(context, line)),
            .. study.Areas.Where(IsUnlit).Select(area => new Question(null, area.GrowsCrop ? nameof(Area.Seasons) : nameof(Area.Weekly),
                $"When are the lights of {area.Name} on? Until that is known they count as never lit.")),
            .. OfSite(study),
            .. study.Areas.Where(area => area.GrowsCrop && IsConverted(study, area)).SelectMany(OfLight),
            .. Kinds.SelectMany(kind => study.Lines.Where(line => kind.Missing(line, growing.Contains(line.Area)))
                .Select(line => new Question(line.Id, kind.Field, $"{kind.Text} ({NameOf(line)})"))),
        ];
    }

    private static readonly (string Field, Func<SurveyLine, bool, bool> Missing, string Text)[] Kinds =
    [
        (nameof(SurveyLine.Emergency), (line, _) => line.Emergency is null, "Does any of these luminaires light an exit, hold a battery or hang on an emergency circuit?"),
        (nameof(SurveyLine.SupplyVolts), (line, _) => line.SupplyVolts is null, "What is the supply voltage at the luminaires?"),
        (nameof(SurveyLine.LampsOut), (line, _) => line.LampsOut is null, "How many lamps are dark or missing?"),
        (nameof(SurveyLine.LampsInstalled), (line, _) => line.LampsInstalled is null && line.BurnHours is null, "When were the present lamps fitted, or how many hours have they burned?"),
        (nameof(SurveyLine.BallastYear), (line, _) => line.BallastYear is null, "In which year were the ballasts made or fitted?"),
        (nameof(SurveyLine.StartMethod), (line, _) => line.StartMethod is null, "What start method is printed on the ballast?"),
        (nameof(SurveyLine.Location), (line, _) => line.Location is null, "Is the place dry, damp or wet?"),
        (nameof(SurveyLine.MountingHeight), (line, growsCrop) => growsCrop && line.MountingHeight is null, "How high do the luminaires hang over the crop?"),
    ];

    private static IEnumerable<Question> Uncounted(StudyContext context, SurveyLine line)
    {
        if (line.SetUp is null)
            yield return new(line.Id, nameof(line.SetUp), $"Which lamps and ballasts are in these luminaires? Until that is known the line is not counted. ({NameOf(line)})");
        if (line.Count is null)
            yield return new(line.Id, nameof(line.Count), $"How many luminaires are there? Until that is known the line is not counted. ({NameOf(line)})");
        if (line is { SetUp: not null, Count: not null } && !context.IsCountable(line))
            yield return new(line.Id, nameof(line.Reading), $"How many watts does one luminaire draw? The catalogue does not say, so the line is not counted. ({NameOf(line)})");
    }

    private static bool IsUnlit(Area area) => area.GrowsCrop ? area.Seasons.All(season => season.Stages.Count == 0) : area.Weekly is null;

    /// <summary>Whether some option hangs other lamps, tubes or luminaires there.</summary>
    private static bool IsConverted(Study study, Area area) => study.Options.SelectMany(option => option.Measures)
        .Any(measure => measure.Measure is DirectWire or ReplaceLuminaire && study.Lines.Any(line => line.Id == measure.Line && line.Area == area.Id));

    private static IEnumerable<Question> OfLight(Area area)
    {
        if (area.Light is not { Readings.Count: > 0 })
            yield return new(null, nameof(AreaLight.Readings), $"How much light meets the crop in {area.Name}? Read it on a grid at the height of the crop.");
        else if (area.Light.Layout.Count == 0)
            yield return new(null, nameof(AreaLight.Layout), $"Where do the luminaires hang over the bench in {area.Name}? Without that light is only taken to follow the photons they send out.");
        if (area.Seasons.SelectMany(season => season.Stages).Any(stage => stage.Target is null))
            yield return new(null, nameof(Stage.Target), $"How much light does each stage in {area.Name} want?");
    }

    private static IEnumerable<Question> OfSite(Study study)
    {
        if (study.Site.Jurisdiction is null)
            yield return new(null, nameof(Site.Jurisdiction), "In which country is the site? Safety and waste rules depend on it.");
    }

    private static string NameOf(SurveyLine line) => line.Name.Length > 0 ? line.Name : $"line {line.Id}";
}
