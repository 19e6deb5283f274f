using RetrofitCalc.Engine.Quantities;
using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Files.Surveys;

/// <summary>Reads what was typed in one survey cell into its line.</summary>
public static class SurveyCellParser
{
    public const int LongestName = 200;
    public const int LongestNote = 4000;
    private const double HighestMetres = 60;

    /// <summary>The line with the cell's value in it, or what is wrong with the text. Blank means nobody has said.</summary>
    public static Parsed<SurveyLine> Apply(SurveyLine line, SurveyField field, string? typed, SurveyContext context)
    {
        var text = (typed ?? "").Trim();
        return field switch
        {
            SurveyField.Area => Area(text, context).Then(v => line with { Area = v }),
            SurveyField.Name => Words(text, LongestName).Then(v => line with { Name = v }),
            SurveyField.SetUp => SetUp(text, context).Then(v => line with { SetUp = v }),
            SurveyField.Count => NumberText.ParseCount(text, context.Culture).Then(v => line with { Count = v }),
            SurveyField.LampsOut => NumberText.ParseCount(text, context.Culture).Then(v => line with { LampsOut = v }),
            SurveyField.DeadBallasts => NumberText.ParseCount(text, context.Culture).Then(v => line with { DeadBallasts = v }),
            SurveyField.MountingHeight => Height(text, context).Then(v => line with { MountingHeight = v }),
            SurveyField.SupplyVolts => Within(WithoutUnit(text, "V"), 1, 1000, "volts", context).Then(v => line with { SupplyVolts = v }),
            SurveyField.StartMethod => SurveyWords.Parse(text, SurveyWords.StartMethods).Then(v => line with { StartMethod = v }),
            SurveyField.BallastYear => Year(text).Then(v => line with { BallastYear = v }),
            SurveyField.LampsInstalled => DateText.Parse(text, context.Culture).Then(v => line with { LampsInstalled = v }),
            SurveyField.BurnHours => Within(WithoutUnit(text, "h"), 0, 1e6, "hours", context).Then(v => line with { BurnHours = v is { } h ? OperatingTime.FromHours(h) : null }),
            SurveyField.Location => SurveyWords.Parse(text, SurveyWords.Locations).Then(v => line with { Location = v }),
            SurveyField.Emergency => SurveyWords.Parse(text, SurveyWords.EmergencyRoles).Then(v => line with { Emergency = v }),
            SurveyField.Reading => ReadingText.Parse(text, context.Culture).Then(v => line with { Reading = v }),
            SurveyField.Note => Words(text, LongestNote).Then(v => line with { Note = v }),
            _ => throw new ArgumentOutOfRangeException(nameof(field), field, "Not a survey field."),
        };
    }

    private static Parsed<SurveyLine> Then<T>(this Parsed<T> cell, Func<T, SurveyLine> apply) =>
        cell.Ok ? Parsed.Good(apply(cell.Value!)) : new Parsed<SurveyLine>(null, cell.Problems);

    private static Parsed<string> Words(string text, int longest) => text.Length <= longest
        ? Parsed.Good(text)
        : Parsed.Bad<string>($"The text has {text.Length} characters; at most {longest} fit here.");

    private static Parsed<string> Area(string text, SurveyContext context)
    {
        if (text.Length == 0) return Parsed.Bad<string>("Name the area this line belongs to.");
        return context.AreaNames.Find(text) is { } id
            ? Parsed.Good(id)
            : Parsed.Bad<string>($"There is no area {CellText.Quote(text)}.{Meant(context.AreaNames.Suggest(text))}");
    }

    private static Parsed<string?> SetUp(string text, SurveyContext context)
    {
        if (text.Length == 0) return Parsed.Good<string?>(null);
        return context.SetUpNames.Find(text) is { } id
            ? Parsed.Good<string?>(id)
            : Parsed.Bad<string?>($"{CellText.Quote(text)} is not in the catalogue.{Meant(context.SetUpNames.Suggest(text))}");
    }

    private static string Meant(IReadOnlyList<string> names) =>
        names.Count == 0 ? "" : $" Did you mean {string.Join(" or ", names.Select(CellText.Quote))}?";

    private static Parsed<Length?> Height(string text, SurveyContext context)
    {
        var height = LengthText.Parse(text, context.Culture, context.Unit);
        return height.Value is { Metres: > HighestMetres }
            ? Parsed.Bad<Length?>($"{CellText.Quote(text)} is more than {HighestMetres:0} m high. Is the unit right?")
            : height;
    }

    private static Parsed<double?> Within(string text, double low, double high, string unit, SurveyContext context)
    {
        var number = NumberText.Parse(text, context.Culture);
        return number.Value is { } value && (value < low || value > high)
            ? Parsed.Bad<double?>($"{CellText.Quote(text)} must be {low:0} to {high:0} {unit}.")
            : number;
    }

    private static Parsed<int?> Year(string text)
    {
        if (text.Length == 0) return Parsed.Good<int?>(null);
        return text.Length == 4 && text.All(char.IsAsciiDigit) && int.Parse(text) is >= 1930 and <= 2199 and var year
            ? Parsed.Good<int?>(year)
            : Parsed.Bad<int?>($"{CellText.Quote(text)} is not a year. Type four digits, such as 2009.");
    }

    private static string WithoutUnit(string text, string unit) =>
        text.EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? text[..^unit.Length].TrimEnd() : text;
}
