using Microsoft.AspNetCore.Components;
using NodaTime;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>A day of every year.</summary>
public sealed class AnnualDayField : TypedField<AnnualDate?>
{
    /// <summary>A blank is an answer: no limit, all year.</summary>
    [Parameter] public bool MayBeBlank { get; set; }

    protected override string Write(AnnualDate? value) => AnnualDayText.Write(value!.Value, Culture);

    protected override Parsed<AnnualDate?> Read(string typed)
    {
        var read = AnnualDayText.Parse(typed, Culture);
        return read is { Ok: true, Value: null } && !MayBeBlank
            ? Parsed.Bad<AnnualDate?>($"A day is needed here. Type it like {AnnualDayText.Write(new(3, 15), Culture)}.")
            : read;
    }
}
