using System.Globalization;
using NodaTime;

namespace RetrofitCalc.Files.Typing;

/// <summary>Several days of every year, with commas or semicolons between.</summary>
public static class AnnualDayListText
{
    public static Parsed<IReadOnlyList<AnnualDate>> Parse(string? text, CultureInfo culture)
    {
        var read = (text ?? "").Split([',', ';', '\n'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(day => AnnualDayText.Parse(day, culture)).ToList();
        return read.FirstOrDefault(day => !day.Ok) is { } wrong
            ? new Parsed<IReadOnlyList<AnnualDate>>(null, wrong.Problems)
            : Parsed.Good<IReadOnlyList<AnnualDate>>([.. read.Select(day => day.Value!.Value).Distinct().Order()]);
    }

    public static string Write(IReadOnlyList<AnnualDate> days, CultureInfo culture) => string.Join(", ", days.Select(day => AnnualDayText.Write(day, culture)));
}
