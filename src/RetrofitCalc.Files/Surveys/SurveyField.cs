namespace RetrofitCalc.Files.Surveys;

/// <summary>The facts of a survey line that stand in columns.</summary>
public enum SurveyField
{
    Area,
    Name,
    SetUp,
    Count,
    LampsOut,
    DeadBallasts,
    MountingHeight,
    SupplyVolts,
    StartMethod,
    BallastYear,
    LampsInstalled,
    BurnHours,
    Location,
    Emergency,
    Reading,
    Note,
}

/// <summary>Headings of the survey's columns, as we write them and as people do.</summary>
public static class SurveyHeadings
{
    private static readonly Dictionary<SurveyField, string[]> Words = new()
    {
        [SurveyField.Area] = ["Area", "room", "zone", "space", "bench", "area name", "room name", "bay"],
        [SurveyField.Name] = ["Line", "line name", "name", "group", "description", "fixture group", "luminaires", "item"],
        [SurveyField.SetUp] = ["Set-up", "existing set-up", "existing", "fixture", "fixture type", "luminaire", "luminaire type", "lamp and ballast", "type"],
        [SurveyField.Count] = ["Count", "qty", "quantity", "number", "no", "pieces", "pcs", "number of luminaires", "luminaire count", "fixtures", "fixture count"],
        [SurveyField.LampsOut] = ["Lamps out", "lamps dark", "dark lamps", "failed lamps", "burned out", "out", "lamps missing", "dead lamps"],
        [SurveyField.DeadBallasts] = ["Dead ballasts", "failed ballasts", "ballasts out", "ballasts dead"],
        [SurveyField.MountingHeight] = ["Height", "mounting height", "hanging height", "mounted at", "height over crop", "height above crop"],
        [SurveyField.SupplyVolts] = ["Volts", "voltage", "supply voltage", "supply volts", "v", "line voltage"],
        [SurveyField.StartMethod] = ["Start", "start method", "start type", "ballast start", "ballast start method", "ballast type"],
        [SurveyField.BallastYear] = ["Ballast year", "year of ballast", "ballast date", "ballast made", "ballast fitted"],
        [SurveyField.LampsInstalled] = ["Lamps installed", "installed", "install date", "installation date", "lamp date", "relamped", "date installed"],
        [SurveyField.BurnHours] = ["Burn hours", "hours burned", "lamp hours", "burning hours", "hours on lamps"],
        [SurveyField.Location] = ["Location", "location class", "damp", "wet or dry", "dry damp wet", "environment"],
        [SurveyField.Emergency] = ["Emergency", "emergency role", "emergency lighting", "exit"],
        [SurveyField.Reading] = ["Reading", "measured watts", "meter reading", "measured", "measured power"],
        [SurveyField.Note] = ["Note", "notes", "remark", "remarks", "comment", "comments"],
    };

    public static IReadOnlyList<SurveyField> Fields { get; } = Enum.GetValues<SurveyField>();

    /// <summary>The heading we write.</summary>
    public static string Of(SurveyField field) => Words[field][0];

    /// <summary>Headings that mean the field, ours first.</summary>
    public static IReadOnlyList<string> Synonyms(SurveyField field) => Words[field];
}
