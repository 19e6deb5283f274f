using RetrofitCalc.Files.Surveys;

namespace RetrofitCalc.Web.Features.Survey.Grid;

/// <summary>A column of the survey grid one can type in.</summary>
/// <param name="Field">The fact it holds.</param>
/// <param name="Head">Heading; a line break stands where the heading may break.</param>
/// <param name="Label">The same in one line, for labels and messages.</param>
/// <param name="Css">Width and alignment.</param>
public sealed record SurveyColumn(SurveyField Field, string Head, string Label, string Css = "")
{
    /// <summary>Words to choose from; null for a cell one types in.</summary>
    public IReadOnlyList<string>? Choices { get; init; }

    public string? InputMode { get; init; }

    /// <summary>What an empty cell says.</summary>
    public string Blank { get; init; } = "?";

    /// <summary>A blank means that nobody has said, and is drawn so.</summary>
    public bool Asked { get; init; } = true;

    /// <summary>Id of the list of suggestions.</summary>
    public string? List { get; init; }

    public bool Numeric => Css.StartsWith("num", StringComparison.Ordinal);

    /// <summary>Always in sight, in the order ranges are pasted.</summary>
    public static IReadOnlyList<SurveyColumn> Shown { get; } =
    [
        new(SurveyField.Name, "Line", "Name") { Blank = "name", Asked = false },
        new(SurveyField.SetUp, "Set-up now", "Set-up") { List = "setups", Blank = "not known" },
        new(SurveyField.Count, "Count", "Count", "num w3") { InputMode = "numeric" },
        new(SurveyField.LampsOut, "Lamps\nout", "Lamps out", "num w3") { InputMode = "numeric" },
        new(SurveyField.MountingHeight, "Height", "Height", "num w4") { Blank = "not known" },
        new(SurveyField.SupplyVolts, "Volts", "Volts", "num w3") { InputMode = "decimal" },
        new(SurveyField.StartMethod, "Start", "Start", "w6") { Choices = Words(SurveyWords.StartMethods) },
        new(SurveyField.BallastYear, "Ballast\nyear", "Ballast year", "num w3") { InputMode = "numeric" },
        new(SurveyField.Location, "Location", "Location class", "w4") { Choices = Words(SurveyWords.Locations) },
        new(SurveyField.Emergency, "Emergency\nrole", "Emergency role", "w6") { Choices = Words(SurveyWords.EmergencyRoles) },
    ];

    /// <summary>In the row that opens below a line; a pasted range goes on into them.</summary>
    public static IReadOnlyList<SurveyColumn> Details { get; } =
    [
        new(SurveyField.DeadBallasts, "Dead ballasts", "Dead ballasts") { InputMode = "numeric", Blank = "of the whole line", Asked = false },
        new(SurveyField.LampsInstalled, "Lamps fitted", "Lamps fitted") { Blank = "such as 2024-02-01", Asked = false },
        new(SurveyField.BurnHours, "Hours burned", "Hours burned") { InputMode = "decimal", Blank = "instead of the date", Asked = false },
        new(SurveyField.Reading, "Measured", "Measured watts") { Blank = "such as 57.5 W on 2027-03-15", Asked = false },
        new(SurveyField.Note, "Note", "Note") { Blank = "anything worth knowing", Asked = false },
    ];

    public static IReadOnlyList<SurveyColumn> All { get; } = [.. Shown, .. Details];

    /// <summary>Columns of the table: those shown, three figures, evidence and the button for more.</summary>
    public static int Span => Shown.Count + 5;

    public static string LabelOf(SurveyField field) => All.FirstOrDefault(c => c.Field == field)?.Label ?? SurveyHeadings.Of(field);

    private static IReadOnlyList<string> Words<T>(IReadOnlyList<(T Value, string[] Words)> choices) => [.. choices.Select(c => c.Words[0])];
}
