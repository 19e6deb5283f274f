using Microsoft.AspNetCore.Components;
using NodaTime;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A date of one year.</summary>
public sealed class DateField : TypedField<LocalDate?>
{
    /// <summary>A blank is an answer: no limit.</summary>
    [Parameter] public bool MayBeBlank { get; set; }

    protected override string Write(LocalDate? value) => DateText.Write(value!.Value);

    protected override Parsed<LocalDate?> Read(string typed)
    {
        var read = DateText.Parse(typed, Culture);
        return read is { Ok: true, Value: null } && !MayBeBlank ? Parsed.Bad<LocalDate?>("A date is needed here. Type it like 2027-03-15.") : read;
    }
}
