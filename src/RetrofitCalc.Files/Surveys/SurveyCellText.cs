using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Surveys;

/// <summary>What stands in a survey cell: the text that <see cref="SurveyCellParser"/> reads back.</summary>
public static class SurveyCellText
{
    public static string Of(SurveyLine line, SurveyField field, SurveyContext context) => field switch
    {
        SurveyField.Area => context.Areas.FirstOrDefault(a => a.Id == line.Area)?.Name ?? line.Area,
        SurveyField.Name => line.Name,
        SurveyField.SetUp => context.Catalogue.SetUps.FirstOrDefault(s => s.Id == line.SetUp)?.Name ?? line.SetUp ?? "",
        SurveyField.Count => line.Count?.ToString(context.Culture) ?? "",
        SurveyField.LampsOut => line.LampsOut?.ToString(context.Culture) ?? "",
        SurveyField.DeadBallasts => line.DeadBallasts?.ToString(context.Culture) ?? "",
        SurveyField.MountingHeight => line.MountingHeight is { } height ? LengthText.Write(height, context.Culture, context.Unit) : "",
        SurveyField.SupplyVolts => line.SupplyVolts is { } volts ? NumberText.Write(volts, context.Culture) : "",
        SurveyField.StartMethod => line.StartMethod is { } start ? SurveyWords.Of(SurveyWords.StartMethods, start) : "",
        SurveyField.BallastYear => line.BallastYear?.ToString("0000", context.Culture) ?? "",
        SurveyField.LampsInstalled => line.LampsInstalled is { } day ? DateText.Write(day) : "",
        SurveyField.BurnHours => line.BurnHours is { } hours ? NumberText.Write(hours.Hours, context.Culture) : "",
        SurveyField.Location => line.Location is { } place ? SurveyWords.Of(SurveyWords.Locations, place) : "",
        SurveyField.Emergency => line.Emergency is { } role ? SurveyWords.Of(SurveyWords.EmergencyRoles, role) : "",
        SurveyField.Reading => line.Reading is { } reading ? ReadingText.Write(reading, context.Culture) : "",
        SurveyField.Note => line.Note,
        _ => throw new ArgumentOutOfRangeException(nameof(field), field, "Not a survey field."),
    };
}
