using RetrofitCalc.Engine.Studies;
using RetrofitCalc.Files;
using RetrofitCalc.Files.Typing;

namespace RetrofitCalc.Web.Shared.Fields;

/// <summary>Holidays, with commas between.</summary>
public sealed class HolidaysField : TypedField<IReadOnlyList<Holiday>>
{
    protected override string Write(IReadOnlyList<Holiday> value) => HolidayText.WriteList(value, Culture);

    protected override Parsed<IReadOnlyList<Holiday>> Read(string typed) => HolidayText.ParseList(typed, Culture);
}
