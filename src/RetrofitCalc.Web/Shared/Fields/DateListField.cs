using Microsoft.AspNetCore.Components;
using NodaTime;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A fixed number of dates, as typed or as pasted from a sheet: commas, semicolons or new lines between.</summary>
public sealed class DateListField : TypedField<IReadOnlyList<LocalDate>>
{
    private static readonly char[] Between = [',', ';', '\t', '\r', '\n'];

    /// <summary>How many dates there must be.</summary>
    [Parameter, EditorRequired] public int Count { get; set; }

    protected override string Write(IReadOnlyList<LocalDate> value) => string.Join(", ", value.Select(DateText.Write));

    protected override Parsed<IReadOnlyList<LocalDate>> Read(string typed)
    {
        var parts = typed.Split(Between, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        var read = parts.Select(part => DateText.Parse(part, Culture)).ToList();
        if (read.FirstOrDefault(r => !r.Ok) is { } bad) return new Parsed<IReadOnlyList<LocalDate>>(null, bad.Problems);
        return parts.Length == Count
            ? Parsed.Good<IReadOnlyList<LocalDate>>([.. read.Select(r => r.Value!.Value)])
            : Parsed.Bad<IReadOnlyList<LocalDate>>($"{parts.Length} {(parts.Length == 1 ? "date is" : "dates are")} typed here; there must be {Count}.");
    }
}
