using NodaTime;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>Days of every year, such as holidays, with commas between.</summary>
public sealed class AnnualDaysField : TypedField<IReadOnlyList<AnnualDate>>
{
    protected override string Write(IReadOnlyList<AnnualDate> value) => AnnualDayListText.Write(value, Culture);

    protected override Parsed<IReadOnlyList<AnnualDate>> Read(string typed) => AnnualDayListText.Parse(typed, Culture);
}
